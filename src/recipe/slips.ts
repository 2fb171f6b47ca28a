import { firstIndex } from '../text/first-index.js';
import type { Span } from '../text/span.js';

export const within = (inner: Span, outer: Span): boolean =>
  outer.start <= inner.start && inner.end <= outer.end;

/** The slips (in order) that lie in a span. */
export function slipsIn(slips: readonly Span[], span: Span): readonly Span[] {
  const found: Span[] = [];
  for (let index = firstFrom(slips, span.start); index < slips.length; index++) {
    const slip = slips[index] as Span;
    if (slip.start > span.end) break;
    if (within(slip, span)) found.push(slip);
  }
  return found;
}

/** Whether every slip lies in one of the statements or on the line it ends; both are in order, and statements do not overlap. */
export const allWithin = (
  slips: readonly Span[],
  statements: readonly { readonly span: Span }[],
): boolean => {
  const spans = statements.map(({ span }) => span);
  return slips.every((slip) => {
    const after = firstFrom(spans, slip.start + 1);
    const around = spans[after - 1];
    return around !== undefined && (within(slip, around) || onOneLine(around, slip));
  });
};

/** Whether a span begins on the line on which the other ended. */
const onOneLine = (before: Span, after: Span): boolean =>
  after.start - before.end < 100 && !/[\r\n]/.test(before.source.text.slice(before.end, after.end));

/** The index of the first span that starts at an offset or after it. */
const firstFrom = (spans: readonly Span[], start: number): number =>
  firstIndex(spans.length, (index) => (spans[index] as Span).start >= start);
