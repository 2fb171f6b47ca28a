import { basename, dirname, join } from 'node:path';
import type { Host } from '../host/host.js';
import { nearest } from '../text/nearest.js';

/** The recipes and folders beside a path that leads to nothing, which a slip of the hand may have turned into it. */
export function nearPaths(host: Host, path: string): readonly string[] {
  if (host.kind(`${path}.plica`) === 'file') return [`${path}.plica`];
  const folder = dirname(path);
  const listing = host.list(folder);
  if (listing.kind === 'unreadable') return [];
  const names = listing.entries
    .filter(({ name, kind }) => kind === 'folder' || (kind === 'file' && name.endsWith('.plica')))
    .map(({ name }) => name.replace(ENDING, ''));
  return nearest(basename(path).replace(/\.[^.]*$/, ''), names).map((stem) => {
    const file = join(folder, `${stem}.plica`);
    return host.kind(file) === 'file' ? file : join(folder, stem);
  });
}

const ENDING = /\.plica$/;
