import { writeSync } from 'node:fs';
import { isatty } from 'node:tty';
import type { Outlet } from './host.js';

/** A standard stream, written at once: what is said is out before the process ends, and in order with the other one. */
export function outlet(descriptor: 1 | 2): Outlet {
  let open = true;
  return {
    write: (text) => {
      open = open && writeAll(descriptor, Buffer.from(text));
    },
    isTerminal: () => isatty(descriptor),
    columns: () =>
      isatty(descriptor) ? (descriptor === 1 ? process.stdout : process.stderr).columns : null,
  };
}

/** Whether anybody still reads it. */
function writeAll(descriptor: number, bytes: Buffer): boolean {
  for (let written = 0; written < bytes.length; ) {
    try {
      written += writeSync(descriptor, bytes, written);
    } catch (error) {
      const code = (error as NodeJS.ErrnoException).code;
      if (code === 'EPIPE') return false;
      if (code !== 'EAGAIN') throw error;
      Atomics.wait(PAUSE, 0, 0, 2);
    }
  }
  return true;
}

/** Waited on while a slow reader makes room. */
const PAUSE = new Int32Array(new SharedArrayBuffer(4));
