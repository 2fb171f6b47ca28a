import type { Read } from './host.js';

/** What was read, unless it has more than `most` bytes. */
export const atMost = (bytes: Uint8Array, most: number): Read =>
  bytes.length > most ? { kind: 'too-large', bytes: bytes.length } : { kind: 'bytes', bytes };
