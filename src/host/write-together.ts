import { chmodSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { dropAbandoned } from './abandoned.js';
import type { NewFile, Written } from './host.js';
import { besideOf, makeFolder, placeOf } from './place-of.js';
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
    dropAbandoned(
      folder,
      files.map(({ name }) => name),
    );
    for (const { name, bytes } of files) {
      at = join(folder, name);
      const place = placeOf(at);
      if (typeof place === 'string') return undo(moves, at, place);
      const move: Move = {
        place: place.path,
        beside: besideOf(place.path),
        mode: place.mode,
        before: place.mode === null ? null : readFileSync(place.path),
        moved: false,
      };
      moves.push(move);
      writeBeside(move, bytes);
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

/** A file on its way. `before` and `mode`: what lay in its place, and its permissions; null: nothing did. */
interface Move {
  readonly place: string;
  readonly beside: string;
  readonly mode: number | null;
  readonly before: Uint8Array | null;
  moved: boolean;
}

/** Writes a file beside its place, where none must be yet (one left by a process that died is cleared away first). */
function writeBeside({ beside, mode }: Move, bytes: Uint8Array): void {
  rmSync(beside, { force: true });
  writeFileSync(beside, bytes, { flag: 'wx' });
  if (mode !== null) chmodSync(beside, mode);
}

function undo(moves: readonly Move[], path: string, reason: string): Written {
  const clear = (): void => {
    for (const { beside } of moves) attempt(() => rmSync(beside, { force: true }));
  };
  clear(); // first, since what is put back wants room
  for (const move of moves) if (move.moved) attempt(() => putBack(move));
  clear();
  return { kind: 'unwritable', path, reason };
}

/** If the disk refuses this too, what is said about the first refusal is what can be said. */
function attempt(change: () => void): void {
  try {
    change();
  } catch (error) {
    whyNot(error);
  }
}

/** As it was before, moved there whole as well. */
function putBack(move: Move): void {
  if (move.before === null) return rmSync(move.place);
  writeBeside(move, move.before);
  renameSync(move.beside, move.place);
}
