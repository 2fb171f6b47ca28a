import { closeSync, openSync, rmSync, writeFileSync } from 'node:fs';
import type { Written } from './host.js';
import { whyNot } from './why-not.js';

/** Writes a file that is not there yet, whole or not at all. One that is there stays, even if it came this very moment. */
export function createFile(path: string, bytes: Uint8Array): Written {
  let made = false;
  try {
    const descriptor = openSync(path, 'wx');
    made = true;
    try {
      writeFileSync(descriptor, bytes);
    } finally {
      closeSync(descriptor);
    }
    return { kind: 'written' };
  } catch (error) {
    if (made) rmSync(path, { force: true });
    return { kind: 'unwritable', path, reason: whyNot(error) };
  }
}
