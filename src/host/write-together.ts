import {
  accessSync,
  chmodSync,
  constants,
  lstatSync,
  mkdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { NewFile, Written } from './host.js';
import { whyNot } from './why-not.js';

/**
 * Writes the files of one folder all together: each is written whole beside its place, and only when all are are they
 * moved there. Where one cannot be, what lay in the places before is put back. A link to a file is followed, not replaced;
 * a file that was there keeps its permissions, and one that they say is not to be written is not.
 */
export function writeTogether(folder: string, files: readonly NewFile[]): Written {
  const moves: Move[] = [];
  let at = folder;
  try {
    makeFolder(folder);
    for (const { name, bytes } of files) {
      at = join(folder, name);
      const place = placeOf(at);
      if (place === null) return undo(moves, at, 'something that is no file is in its place');
      if (place.mode !== null && (place.mode & WRITABLE) === 0) return undo(moves, at, 'it is read-only');
      const move: Move = {
        place: place.path,
        beside: beside(place.path),
        before: place.before,
        moved: false,
      };
      moves.push(move);
      writeNew(move.beside, bytes);
      if (place.mode !== null) chmodSync(move.beside, place.mode);
    }
    for (const move of moves) {
      at = move.place;
      renameSync(move.beside, move.place);
      move.moved = true;
    }
    return { kind: 'written' };
  } catch (error) {
    return undo(moves, at, whyNot(error));
  }
}

/**
 * Makes a folder and those above it that are missing, one at a time: told to do that by itself, Node 20 never returns
 * where a file system says that a new folder's parent is not there although it is (`/proc`).
 */
function makeFolder(folder: string): void {
  if (isFolder(folder)) return;
  if (dirname(folder) !== folder) makeFolder(dirname(folder));
  try {
    mkdirSync(folder);
  } catch (error) {
    if (!isFolder(folder)) throw error; // another program may have made it meanwhile
  }
}

const isFolder = (path: string): boolean => statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;

/** A file on its way. `before`: what lay in its place; null: nothing. */
interface Move {
  readonly place: string;
  readonly beside: string;
  readonly before: Uint8Array | null;
  moved: boolean;
}

const beside = (path: string): string => join(dirname(path), `.${basename(path)}.${process.pid}.part`);

/** Permission to write, for anyone. */
const WRITABLE = 0o222;

/** Where a file goes. `before`, `mode`: what lay there, and its permissions; null: nothing did. */
interface Place {
  readonly path: string;
  readonly before: Uint8Array | null;
  readonly mode: number | null;
}

/** Where a file really goes, and what lies there; null where that is no file. */
function placeOf(path: string): Place | null {
  const there = lstatSync(path, { throwIfNoEntry: false });
  if (there === undefined) return { path, before: null, mode: null };
  const real = there.isSymbolicLink() ? realpathSync.native(path) : path;
  const found = lstatSync(real);
  if (!found.isFile()) return null;
  const before = readFileSync(real);
  accessSync(real, constants.W_OK);
  return { path: real, before, mode: found.mode & 0o7777 };
}

/** Writes a file that must not be there yet (one left by a process that died is cleared away first). */
function writeNew(path: string, bytes: Uint8Array): void {
  rmSync(path, { force: true });
  writeFileSync(path, bytes, { flag: 'wx' });
}

function undo(moves: readonly Move[], path: string, reason: string): Written {
  for (const { place, beside, before, moved } of moves) {
    try {
      rmSync(beside, { force: true });
      if (!moved) continue;
      if (before === null) rmSync(place);
      else writeFileSync(place, before);
    } catch {
      // The disk refuses this too: what is said about the first refusal is what can be said.
    }
  }
  return { kind: 'unwritable', path, reason };
}
