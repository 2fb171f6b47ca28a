import { basename, dirname, join } from 'node:path';
import type { Host } from '../host/host.js';
import { nearest } from '../text/nearest.js';

/** The recipes and folders beside a path that leads to nothing, which a slip of the hand may have turned into it. */
export function nearPaths(host: Host, path: string): readonly string[] {
  if (host.kind(path + ENDING) === 'file') return [path + ENDING];
  const folder = dirname(path);
  const listing = host.list(folder);
  if (listing.kind === 'unreadable') return [];
  const byStem = new Map<string, string>();
  // Of a folder and a recipe that are named alike, the recipe was meant.
  for (const { name, kind } of listing.entries) {
    if (kind === 'folder' && !byStem.has(name)) byStem.set(name, join(folder, name));
    if (kind === 'file' && name.endsWith(ENDING)) byStem.set(basename(name, ENDING), join(folder, name));
  }
  return nearest(basename(path).replace(/\.[^.]*$/, ''), byStem.keys()).flatMap(
    (stem) => byStem.get(stem) ?? [],
  );
}

const ENDING = '.plica';
