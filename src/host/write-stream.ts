import { chmodSync, closeSync, openSync, renameSync, rmSync, writeSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import { dropAbandoned } from './abandoned.js';
import type { Written } from './host.js';
import { onStop } from './on-stop.js';
import { besideOf, makeFolder, type Place, placeOf } from './place-of.js';
import { whyNot } from './why-not.js';

/** Writes a file piece by piece beside its place, and moves it there when it is whole; else what was written is taken away. */
export async function writeStream(path: string, pieces: AsyncIterable<Uint8Array>): Promise<Written> {
  const refused = (reason: string): Written => ({ kind: 'unwritable', path, reason });
  let place: Place;
  let file: number;
  try {
    makeFolder(dirname(path));
    const found = placeOf(path);
    if (typeof found === 'string') return refused(found);
    place = found;
    dropAbandoned(dirname(place.path), [basename(place.path)]);
    rmSync(besideOf(place.path), { force: true });
    file = openSync(besideOf(place.path), 'wx');
  } catch (error) {
    return refused(whyNot(error));
  }
  const beside = besideOf(place.path);
  const forget = onStop(() => rmSync(beside, { force: true }));
  const drop = (): void => {
    closeSync(file);
    rmSync(beside, { force: true });
  };
  try {
    for await (const piece of pieces) {
      const reason = written(file, piece);
      if (reason === null) continue;
      drop();
      return refused(reason);
    }
  } catch (error) {
    drop();
    throw error;
  } finally {
    forget();
  }
  try {
    closeSync(file);
    if (place.mode !== null) chmodSync(beside, place.mode);
    renameSync(beside, place.path);
    return { kind: 'written' };
  } catch (error) {
    rmSync(beside, { force: true });
    return refused(whyNot(error));
  }
}

/** Writes all of a piece; the reason where the disk refuses. */
function written(file: number, piece: Uint8Array): string | null {
  try {
    for (let from = 0; from < piece.length; ) from += writeSync(file, piece, from);
    return null;
  } catch (error) {
    return whyNot(error);
  }
}
