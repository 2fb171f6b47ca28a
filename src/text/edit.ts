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
