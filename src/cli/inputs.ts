import { dirname, join, normalize } from 'node:path';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { findRecipes } from '../host/find-recipes.js';
import type { Host } from '../host/host.js';
import { projectRoot } from '../host/project-root.js';
import { type MarkedText, readInputText, readText } from '../host/read-text.js';
import { type PlacedFile, shown } from '../host/reader.js';
import { tooLong } from '../syntax/too-long.js';
import { source } from '../text/source.js';
import { visible } from '../text/visible.js';
import { nearPaths } from './near-paths.js';
import { didYouMean } from './words.js';

/** The files that a command is given, and what kept it from reading others. */
export interface Inputs {
  readonly files: readonly GivenFile[];
  /** Findings about files that are too long to be read. */
  readonly limits: readonly Diagnostic[];
  /** Sentences that each name a path; each is there once, however many ways lead to it. */
  readonly troubles: readonly string[];
}

/** A file that was given, and the byte order mark that stands before its text, if one does. */
export interface GivenFile extends PlacedFile {
  readonly mark: MarkedText['mark'];
}

/** Reads files, the recipes of folders, and for `-` standard input; each file once. No path: the working folder. */
export async function readInputs(host: Host, paths: readonly string[]): Promise<Inputs> {
  const files = new Map<string, GivenFile>();
  const limits = new Map<string, Diagnostic>();
  const troubles = new Set<string>();
  for (const path of paths.length === 0 ? ['.'] : paths) {
    const { places, troubles: met } = path === INPUT ? FROM_INPUT : placesOf(host, path);
    for (const each of met) troubles.add(each);
    const rootOf = rootsUnder(host, path);
    for (const place of places) {
      const id = realPlace(host, place);
      if (files.has(id) || limits.has(id)) continue;
      const read = place === INPUT_PLACE ? await readInputText(host) : readText(host, place);
      if (read.kind === 'unreadable') troubles.add(trouble(place, read.reason));
      else if (read.kind === 'too-large')
        limits.set(id, tooLong(source(nameOf(place), ''), read.bytes, 'bytes'));
      else files.set(id, placed(place, id, read, rootOf(dirname(id))));
    }
  }
  return { files: [...files.values()], limits: [...limits.values()], troubles: [...troubles] };
}

/** How standard input is given as a path. */
export const INPUT = '-';
/** Where standard input is said to be, and the name of its source. */
export const INPUT_PLACE = '<stdin>';
const FROM_INPUT: Places = { places: [INPUT_PLACE], troubles: [] };

interface Places {
  readonly places: readonly string[];
  readonly troubles: readonly string[];
}

function placesOf(host: Host, path: string): Places {
  const wrong = wrongPath(host, path);
  if (wrong !== null) return { places: [], troubles: [wrong] };
  if (host.kind(path) !== 'folder') return { places: [path], troubles: [] };
  const { files, unreadable } = findRecipes(host, path);
  const troubles = unreadable.map((folder) => trouble(folder.path, folder.reason));
  if (files.length === 0 && troubles.length === 0) troubles.push(trouble(path, NO_RECIPES));
  return { places: files, troubles };
}

/** What is wrong with a path that leads to nothing, with the names in its folder that may have been meant; else null. */
export function wrongPath(host: Host, path: string): string | null {
  if (path === '') return 'a path that was given is empty; the working folder is `.`';
  if (host.kind(path) !== 'missing') return null;
  const near = nearPaths(host, path).map((each) => visible(shown(each)));
  return trouble(path, `there is no such file or folder${didYouMean(near)}`);
}

const NO_RECIPES = 'there are no recipes (*.plica) in this folder';

const trouble = (path: string, reason: string): string => `${visible(shown(path))}: ${reason}`;

/** The real path of a file; standard input stands in the working folder. */
const realPlace = (host: Host, place: string): string =>
  place === INPUT_PLACE ? join(host.realPath('.') ?? host.cwd, place) : (host.realPath(place) ?? place);

/** A path as messages show it. */
const nameOf = (place: string): string => shown(normalize(place));

const placed = (place: string, id: string, { text, mark }: MarkedText, root: string): GivenFile => ({
  input: { id, source: source(nameOf(place), text) },
  root,
  mark,
});

/** The root of the files in a folder: looked for once, from where that really is; failing that it is the folder that was given. */
function rootsUnder(host: Host, given: string): (folder: string) => string {
  const known = new Map<string, string>();
  const otherwise = host.kind(given) === 'folder' ? host.realPath(given) : null;
  return (folder) => {
    const root = known.get(folder) ?? projectRoot(host, folder, otherwise ?? folder);
    known.set(folder, root);
    return root;
  };
}
