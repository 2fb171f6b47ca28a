import { dirname, join, relative, resolve } from 'node:path';
import type { Host } from './host.js';
import { isInside } from './reader.js';

/** Where a path lies below `top`, a real path, by way of links outside it too; links in it are left alone. Null: it does not. */
export function placeBelow(host: Host, top: string, path: string): string | null {
  const place = resolve(host.cwd, path);
  if (isInside(top, place)) return place;
  for (const outer of foldersTo(place)) {
    const real = host.realPath(outer);
    if (real !== null && isInside(top, real)) return join(real, relative(outer, place));
  }
  return null;
}

/** The folders that a path leads through, from the root, and the path itself. */
const foldersTo = (path: string): readonly string[] =>
  dirname(path) === path ? [path] : [...foldersTo(dirname(path)), path];
