import { position } from '../text/source.js';
import type { Span } from '../text/span.js';

/** A stretch of a text for programs: lines and columns from 1, columns in code points; the end is the first place after it. */
export interface Region {
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

export function region({ source, start, end }: Span): Region {
  const last = position(source, end);
  return { ...position(source, start), endLine: last.line, endColumn: last.column };
}
