import { lineEnd, type Source } from './source.js';
import type { Span } from './span.js';

/** Replaces what `span` covers by `text` (an empty span inserts). */
export interface Edit {
  readonly span: Span;
  readonly text: string;
}

/** Applies edits that do not overlap to the text of their one source. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  const parts: string[] = [];
  let done = 0;
  for (const { span, text: instead } of inTextOrder(edits)) {
    parts.push(text.slice(done, span.start), instead);
    done = span.end;
  }
  return parts.join('') + text.slice(done);
}

/** Edits of one source as they follow each other in its text; what is put in at a place comes before what stands there. */
export const inTextOrder = (edits: readonly Edit[]): readonly Edit[] =>
  edits.toSorted(({ span: a }, { span: b }) => a.start - b.start || a.end - b.end);

/** Edits, source by source. */
export function bySource(edits: readonly Edit[]): ReadonlyMap<Source, readonly Edit[]> {
  const groups = new Map<Source, Edit[]>();
  for (const edit of edits) {
    const group = groups.get(edit.span.source);
    if (group) group.push(edit);
    else groups.set(edit.span.source, [edit]);
  }
  return groups;
}

/** The edit with its line ends written as those of the text that it goes into. */
export const inItsLineEnds = ({ span, text }: Edit): Edit => ({
  span,
  text: text.includes('\n') ? text.replace(/\r?\n/g, lineEnd(span.source)) : text,
});
