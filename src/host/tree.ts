import { basename, dirname, isAbsolute, join, parse, relative, sep } from 'node:path';
import { isInside } from './reader.js';
import type { Tracked } from './tracked.js';

/** The files that git keeps, each in its place below `top`, a real path. */
export interface Tree {
  readonly top: string;
  /** By absolute paths; the folders too. `.git` is one at the top, as it is on a disk. */
  readonly places: ReadonlyMap<string, Place>;
}

/** `shut`: what cannot be looked into, and why; it passes for a file where `isFile`. */
export type Place =
  | { readonly kind: 'folder'; readonly names: Set<string> }
  | { readonly kind: 'file'; readonly id: string }
  | { readonly kind: 'link'; readonly id: string }
  | { readonly kind: 'shut'; readonly isFile: boolean; readonly reason: string };

export function tree(top: string, files: readonly Tracked[]): Tree {
  const places = new Map<string, Place>([[top, folder()]]);
  for (const file of files) put(places, join(top, file.path), placeOf(file));
  places.set(join(top, '.git'), folder());
  return { top, places };
}

function put(places: Map<string, Place>, path: string, place: Place): void {
  places.set(path, place);
  const above = places.get(dirname(path));
  if (above?.kind === 'folder') above.names.add(basename(path));
  else put(places, dirname(path), folder(basename(path)));
}

const folder = (...names: readonly string[]): Place => ({ kind: 'folder', names: new Set(names) });

const placeOf = ({ kind, id }: Tracked): Place =>
  kind === 'file' || kind === 'link' ? { kind, id } : SHUT[kind];

const SHUT = {
  submodule: { kind: 'shut', isFile: false, reason: 'it is in a submodule, which is not looked into' },
  unmerged: { kind: 'shut', isFile: true, reason: 'a merge left conflicts in it; settle them first' },
} as const;

/** Where a path leads, behind all links. */
export type Reached =
  | { readonly kind: 'there'; readonly path: string; readonly place: Exclude<Place, { kind: 'link' }> }
  /** A link leads out of the tree. */
  | { readonly kind: 'outside'; readonly path: string }
  | { readonly kind: 'nothing' };

/** Follows an absolute path below the top, as a disk would. `target`: where a link says that it leads; null: unknown. */
export function reach({ top, places }: Tree, path: string, target: (id: string) => string | null): Reached {
  const ahead = namesOf(relative(top, path));
  let at = top;
  let links = 0;
  for (let name = ahead.pop(); name !== undefined; name = ahead.pop()) {
    at = name === '..' ? dirname(at) : join(at, name);
    const place = places.get(at);
    if (place === undefined && isInside(top, at)) return NOTHING;
    if (place?.kind === 'file' && ahead.length > 0) return NOTHING;
    if (place?.kind === 'shut') return { kind: 'there', path: join(at, ...ahead.reverse()), place };
    if (place?.kind !== 'link') continue;
    const way = ++links > MOST_LINKS ? null : target(place.id);
    if (way === null) return NOTHING;
    at = isAbsolute(way) ? parse(way).root : dirname(at);
    ahead.push(...namesOf(way));
  }
  const place = places.get(at);
  if (place === undefined) return { kind: 'outside', path: at };
  return place.kind === 'link' ? NOTHING : { kind: 'there', path: at, place };
}

const NOTHING: Reached = { kind: 'nothing' };

/** As many as Linux follows; more go in a circle. */
const MOST_LINKS = 40;

/** The names along a path, the last one first. */
const namesOf = (path: string): string[] =>
  path
    .replaceAll('/', sep)
    .split(sep)
    .filter((name) => name !== '' && name !== '.')
    .reverse();
