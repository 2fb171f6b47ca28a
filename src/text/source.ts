/*
 * text/: named texts, places in them, edits to them.
 * In: a name and a string. Out: lines, columns, spans.
 * Refuses to know: what any text means, and where it was read from.
 */

import { firstIndex } from './first-index.js';

/** A named text; `name` is the path as messages show it (`<stdin>` for standard input). */
export interface Source {
  readonly name: string;
  readonly text: string;
  /** Offset (UTF-16 units) at which each line starts; the first is 0. LF, CRLF and lone CR each end a line. */
  readonly lineStarts: readonly number[];
}

/** A line and a column, both from 1; columns count code points. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

/** Names a text and finds its lines. */
export function source(name: string, text: string): Source {
  const lineStarts = [0];
  for (let offset = 0; offset < text.length; offset++) {
    const code = text.charCodeAt(offset);
    if (code === 10 || (code === 13 && text.charCodeAt(offset + 1) !== 10)) lineStarts.push(offset + 1);
  }
  return { name, text, lineStarts };
}

/** The line and column of an offset (clamped to the text). */
export function position({ text, lineStarts }: Source, offset: number): Position {
  const at = Math.max(0, Math.min(offset, text.length));
  const line = firstIndex(lineStarts.length, (index) => (lineStarts[index] ?? 0) > at);
  return { line, column: codePoints(text, lineStarts[line - 1] ?? 0, at) + 1 };
}

function codePoints(text: string, start: number, end: number): number {
  let count = 0;
  for (let offset = start; offset < end; count++) offset += (text.codePointAt(offset) ?? 0) > 0xffff ? 2 : 1;
  return count;
}

/** The text of a line (from 1), without its line end. */
export function lineText({ text, lineStarts }: Source, line: number): string {
  const start = lineStarts[line - 1] ?? text.length;
  const end = lineStarts[line] ?? text.length;
  return text.slice(start, end).replace(/[\r\n]+$/, '');
}

/** How the first line of a text ends; a text of one line would end it with LF. */
export function lineEnd({ text, lineStarts }: Source): '\n' | '\r\n' | '\r' {
  const end = text.slice(0, lineStarts[1] ?? 0);
  return end.endsWith('\r\n') ? '\r\n' : end.endsWith('\r') ? '\r' : '\n';
}
