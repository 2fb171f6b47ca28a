import { lineEnd } from './source.js';
import type { Span } from './span.js';

/** Replaces what `span` covers by `text` (an empty span inserts). */
export interface Edit {
  readonly span: Span;
  readonly text: string;
}

/** Applies edits that do not overlap to the text of their one source. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  let result = text;
  for (const { span, text: replacement } of [...edits].sort((a, b) => b.span.start - a.span.start)) {
    result = result.slice(0, span.start) + replacement + result.slice(span.end);
  }
  return result;
}

/** The edit with its line ends written as those of the text that it goes into. */
export const inItsLineEnds = ({ span, text }: Edit): Edit => ({
  span,
  text: text.includes('\n') ? text.replace(/\r?\n/g, lineEnd(span.source)) : text,
});

/** Whether two edits share a place, or leave none between them: which of them comes first might then matter. */
export const touch = ({ span: one }: Edit, { span: other }: Edit): boolean =>
  one.source === other.source && one.start <= other.end && other.start <= one.end;
