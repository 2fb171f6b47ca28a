import { isUtf8 } from 'node:buffer';
import { basename, dirname } from 'node:path';
import { LONGEST_TEXT } from '../text/longest.js';
import type { Host, Read, TooLarge, Unreadable, Written } from './host.js';

/** A text without the byte order mark that may stand before it. */
export interface MarkedText {
  readonly kind: 'text';
  readonly text: string;
  readonly mark: '' | '\ufeff';
}

export type TextRead = MarkedText | TooLarge | Unreadable;

/** Reads a file that must be UTF-8; a byte order mark at its start is passed over. */
export const readText = (host: Host, path: string): TextRead => decoded(host.read(path, LONGEST_TEXT));

/** Reads standard input, which must be UTF-8. */
export const readInputText = async (host: Host): Promise<TextRead> =>
  decoded(await host.readInput(LONGEST_TEXT));

/**
 * Puts `after` in the place of a file's text, which was read as `before`; a byte order mark stays. A file that has
 * changed since then is left as it is.
 */
export function rewriteText(host: Host, path: string, before: string, after: string): Written {
  const read = host.read(path, LONGEST_TEXT);
  const now = decoded(read);
  if (now.kind === 'unreadable') return { kind: 'unwritable', path, reason: now.reason };
  if (now.kind === 'too-large' || now.text !== before)
    return { kind: 'unwritable', path, reason: 'it has changed since it was read' };
  const mark = read.kind === 'bytes' && isMarked(read.bytes) ? MARK : [];
  const bytes = Buffer.concat([Buffer.from(mark), Buffer.from(after)]);
  return host.write(dirname(path), [{ name: basename(path), bytes }]);
}

/** The byte order mark of UTF-8. */
const MARK = [0xef, 0xbb, 0xbf] as const;

const isMarked = (bytes: Uint8Array): boolean => MARK.every((byte, index) => bytes[index] === byte);

function decoded(read: Read): TextRead {
  if (read.kind !== 'bytes') return read;
  const bytes = Buffer.from(read.bytes.buffer, read.bytes.byteOffset, read.bytes.byteLength);
  if (isWide(bytes)) return { kind: 'unreadable', reason: UTF_16 };
  if (!isUtf8(bytes)) return { kind: 'unreadable', reason: notUtf8(bytes) };
  return isMarked(bytes)
    ? { kind: 'text', text: bytes.toString('utf8', MARK.length), mark: '\ufeff' }
    : { kind: 'text', text: bytes.toString('utf8'), mark: '' };
}

/** Whether every letter at its start has a second byte, which is nothing: UTF-16 without its mark. */
const isWide = ([first, second, third, fourth]: Uint8Array): boolean =>
  (first !== 0 && second === 0 && third !== 0 && fourth === 0) ||
  (first === 0 && second !== 0 && third === 0 && fourth !== 0);

const UTF_16 = 'it is UTF-16, not UTF-8; save it as UTF-8';

/** How files begin that are often beside a recipe, in hexadecimal digits: the signatures of PDF, PNG, JPEG and ZIP, from memory. */
const NO_TEXTS: readonly (readonly [signature: string, what: string])[] = [
  ['255044462d', 'a PDF'],
  ['89504e470d0a1a0a', 'a picture'],
  ['ffd8ff', 'a picture'],
  ['504b0304', 'a packed file'],
];

/** Names what it is where its first bytes give that away, else the first line that is at fault. */
function notUtf8(bytes: Buffer): string {
  const begins = bytes.toString('hex', 0, 8);
  if (begins.startsWith('fffe') || begins.startsWith('feff')) return UTF_16;
  const [, what] = NO_TEXTS.find(([signature]) => begins.startsWith(signature)) ?? [];
  if (what !== undefined) return `it is ${what}, and no text`;
  let line = 1;
  for (let start = 0; start < bytes.length; line++) {
    const end = bytes.indexOf(0x0a, start);
    const stop = end < 0 ? bytes.length : end;
    if (!isUtf8(bytes.subarray(start, stop))) break;
    start = stop + 1;
  }
  return `line ${line} is not UTF-8; save the file as UTF-8`;
}
