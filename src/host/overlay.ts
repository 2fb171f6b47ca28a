import { basename, dirname, join, resolve } from 'node:path';
import { atMost } from './at-most.js';
import type { Entry, Host, Listing } from './host.js';

/** The machine with other bytes in some of its files. A file that is not there comes to be, and its folders with it. */
export function overlay(host: Host, files: ReadonlyMap<string, Uint8Array>): Host {
  const laid = new Map([...files].map(([path, bytes]) => [placeOf(host, path), bytes]));
  const folders = new Set([...laid.keys()].flatMap(foldersAbove));
  const laidIn = (folder: string): readonly Entry[] => [
    ...[...laid.keys()].filter(isIn(folder)).map((path) => entry(path, 'file')),
    ...[...folders].filter(isIn(folder)).map((path) => entry(path, 'folder')),
  ];

  return {
    ...host,
    kind: (path) => {
      const place = placeOf(host, path);
      return laid.has(place) ? 'file' : folders.has(place) ? 'folder' : host.kind(path);
    },
    realPath: (path) => {
      const place = placeOf(host, path);
      return laid.has(place) || folders.has(place) ? place : host.realPath(path);
    },
    read: (path, most) => {
      const bytes = laid.get(placeOf(host, path));
      return bytes === undefined ? host.read(path, most) : atMost(bytes, most);
    },
    list: (folder) => {
      const place = placeOf(host, folder);
      return folders.has(place) ? joined(host.list(folder), laidIn(place)) : host.list(folder);
    },
    // Other threads would read the disk.
    beside: async () => [],
  };
}

/** The real path of a place, or the one that it would have. */
function placeOf(host: Host, path: string): string {
  const place = resolve(host.cwd, path);
  const real = host.realPath(place);
  if (real !== null || dirname(place) === place) return real ?? place;
  return join(placeOf(host, dirname(place)), basename(place));
}

const foldersAbove = (path: string): readonly string[] =>
  dirname(path) === path ? [] : [dirname(path), ...foldersAbove(dirname(path))];

const isIn =
  (folder: string) =>
  (path: string): boolean =>
    path !== folder && dirname(path) === folder;

const entry = (path: string, kind: Entry['kind']): Entry => ({ name: basename(path), kind });

/** What lies in a folder, and what is laid over it: of two that are named alike, the latter. */
const joined = (listing: Listing, over: readonly Entry[]): Listing => ({
  kind: 'entries',
  entries: [
    ...(listing.kind === 'entries' ? listing.entries : []).filter(
      ({ name }) => !over.some((each) => each.name === name),
    ),
    ...over,
  ],
});
