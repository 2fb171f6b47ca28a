import { fstatSync, writeSync } from 'node:fs';
import type { Outlet } from './host.js';

/** A standard stream, written at once: what is said is out before the process ends, and in order with the other one. */
export function outlet(descriptor: 1 | 2): Outlet {
  let isRead = true;
  const isTerminal = (): boolean => fstatSync(descriptor).isCharacterDevice() && stream(descriptor).isTTY;
  return {
    write: (text) => {
      isRead = isRead && writeAll(descriptor, Buffer.from(text));
    },
    isRead: () => isRead,
    isTerminal,
    columns: () => (isTerminal() ? stream(descriptor).columns : null),
  };
}

/** Loads what Node needs for streams: only asked for where it may be a terminal, as a start without it is quicker. */
const stream = (descriptor: 1 | 2) => (descriptor === 1 ? process.stdout : process.stderr);

/** Whether anybody still reads it. What cannot be said on standard error is let go: there is nowhere to complain of that. */
function writeAll(descriptor: 1 | 2, bytes: Buffer): boolean {
  for (let written = 0; written < bytes.length; ) {
    try {
      written += writeSync(descriptor, bytes, written);
    } catch (error) {
      const code = (error as NodeJS.ErrnoException).code;
      if (code === 'EAGAIN') Atomics.wait(PAUSE, 0, 0, 2);
      else if (descriptor === 2 || isGone(descriptor, code)) return false;
      else throw error;
    }
  }
  return true;
}

/** A pipe with no reader, or a terminal that was closed; on a disk the second code means that the disk fails. */
const isGone = (descriptor: 1 | 2, code: string | undefined): boolean =>
  code === 'EPIPE' || (code === 'EIO' && fstatSync(descriptor).isCharacterDevice());

/** Waited on while a slow reader makes room. */
const PAUSE = new Int32Array(new SharedArrayBuffer(4));
