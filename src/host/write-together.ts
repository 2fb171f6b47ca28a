import { chmodSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
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
    for (const { name, bytes } of files) {
      at = join(folder, name);
      const place = placeOf(at);
      if (typeof place === 'string') return undo(moves, at, place);
      const move: Move = {
        place: place.path,
        beside: besideOf(place.path),
        before: place.mode === null ? null : readFileSync(place.path),
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

/** A file on its way. `before`: what lay in its place; null: nothing. */
interface Move {
  readonly place: string;
  readonly beside: string;
  readonly before: Uint8Array | null;
  moved: boolean;
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
