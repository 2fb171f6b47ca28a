import { join } from 'node:path';
import type { Host } from './host.js';

/** What a search found, and the folders that it could not look into. */
export interface Found {
  readonly files: readonly string[];
  readonly unreadable: readonly { readonly path: string; readonly reason: string }[];
}

/**
 * Every `*.plica` below a folder, by name, folder by folder. Links to folders are not followed (so there are no circles);
 * `node_modules` and folders whose name starts with a dot are passed over.
 */
export function findRecipes(host: Host, folder: string): Found {
  const listing = host.list(folder);
  if (listing.kind === 'unreadable') {
    return { files: [], unreadable: [{ path: folder, reason: listing.reason }] };
  }
  const found: { files: string[]; unreadable: Found['unreadable'][number][] } = { files: [], unreadable: [] };
  for (const { name, kind } of [...listing.entries].sort((a, b) => (a.name < b.name ? -1 : 1))) {
    const path = join(folder, name);
    if (kind === 'file' && name.endsWith('.plica')) found.files.push(path);
    if (kind === 'folder' && name !== 'node_modules' && !name.startsWith('.')) {
      const below = findRecipes(host, path);
      found.files.push(...below.files);
      found.unreadable.push(...below.unreadable);
    }
  }
  return found;
}
