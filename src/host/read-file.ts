import { closeSync, constants, openSync, readSync } from 'node:fs';
import type { Read } from './host.js';

/**
 * Reads a file that says how many bytes it has, and may have more: some that a system makes up say 0, and never end. No more
 * than `most` bytes are read; what has nothing to give yet is not waited for.
 */
export function readFile(path: string, size: number, most: number): Read {
  const file = openSync(path, constants.O_RDONLY | constants.O_NONBLOCK);
  try {
    const full: Buffer[] = [];
    let room = Buffer.allocUnsafe(size === 0 ? MORE : size + 1);
    let filled = 0;
    for (let length = 0; length <= most; ) {
      const count = readSync(file, room, filled, room.length - filled, null);
      if (count === 0) return { kind: 'bytes', bytes: Buffer.concat([...full, room.subarray(0, filled)]) };
      length += count;
      filled += count;
      if (filled < room.length) continue;
      full.push(room);
      room = Buffer.allocUnsafe(MORE);
      filled = 0;
    }
    return { kind: 'too-large', bytes: null };
  } finally {
    closeSync(file);
  }
}

/** How much is asked for at once beyond what a file says it has. In bytes; a round number, as some made-up files want it. */
const MORE = 65_536;
