import { isUtf8 } from 'node:buffer';
import type { Host, Read, Unreadable } from './host.js';

export type TextRead = { readonly kind: 'text'; readonly text: string } | Unreadable;

/** A file of recipes larger than this is refused: it is no text that a person wrote. */
const MOST_BYTES = 1_000_000;

/** Reads a file that must be UTF-8; a byte order mark at its start is passed over. */
export const readText = (host: Host, path: string): TextRead => decoded(host.read(path, MOST_BYTES));

/** Reads standard input, which must be UTF-8. */
export const readInputText = async (host: Host): Promise<TextRead> =>
  decoded(await host.readInput(MOST_BYTES));

function decoded(read: Read): TextRead {
  if (read.kind === 'unreadable') return read;
  const bytes = Buffer.from(read.bytes.buffer, read.bytes.byteOffset, read.bytes.byteLength);
  if (!isUtf8(bytes)) return { kind: 'unreadable', reason: notUtf8(bytes) };
  const marked = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  return { kind: 'text', text: bytes.toString('utf8', marked ? 3 : 0) };
}

/** Names the encoding where its mark gives it away, else the first line that is at fault. */
function notUtf8(bytes: Buffer): string {
  const mark = bytes.toString('hex', 0, 2);
  if (mark === 'fffe' || mark === 'feff') return 'it is UTF-16, not UTF-8; save it as UTF-8';
  let line = 1;
  for (let start = 0; start < bytes.length; line++) {
    const end = bytes.indexOf(0x0a, start);
    const stop = end < 0 ? bytes.length : end;
    if (!isUtf8(bytes.subarray(start, stop))) break;
    start = stop + 1;
  }
  return `line ${line} is not UTF-8; save the file as UTF-8`;
}
