import type { Source } from './source.js';

/** A stretch of a source, half-open, in UTF-16 offsets: `start <= end`. */
export interface Span {
  readonly source: Source;
  readonly start: number;
  readonly end: number;
}

/** The text that a span covers. */
export const spanText = ({ source, start, end }: Span): string => source.text.slice(start, end);

/** The smallest span that covers both; they lie in one source, the first before the second. */
export const through = (first: Span, last: Span): Span => ({
  source: first.source,
  start: Math.min(first.start, last.start),
  end: Math.max(first.end, last.end),
});
