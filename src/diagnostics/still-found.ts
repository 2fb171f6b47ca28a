import { bySource, type Edit, inTextOrder } from '../text/edit.js';
import { firstIndex } from '../text/first-index.js';
import type { Span } from '../text/span.js';
import type { Diagnostic } from './diagnostic.js';

/** Whether one of some findings is there after edits too: the same is said, of where it stood. The edits lie apart. */
export function isAnyStill(
  before: readonly Diagnostic[],
  after: readonly Diagnostic[],
  edits: readonly Edit[],
): boolean {
  const starts = startsOf(after);
  const shifts = new Map([...bySource(edits)].map(([source, own]) => [source, shiftOf(own)]));
  return before.some((finding) => {
    const { span } = finding.primary;
    const alike = starts.get(said(finding)) ?? [];
    const { start, end } = moved(span, shifts.get(span.source) ?? UNMOVED);
    const at = alike[firstIndex(alike.length, (index) => (alike[index] ?? 0) >= start)];
    return at !== undefined && at < Math.max(end, start + 1);
  });
}

/** What a finding says, and of which file. */
const said = ({ problem, message, primary }: Diagnostic): string =>
  JSON.stringify([problem.name, primary.span.source.name, message]);

/** Where each thing is said, in the order of the text. */
function startsOf(found: readonly Diagnostic[]): ReadonlyMap<string, readonly number[]> {
  const starts = new Map<string, number[]>();
  for (const finding of found) {
    const { start } = finding.primary.span;
    const alike = starts.get(said(finding));
    if (alike) alike.push(start);
    else starts.set(said(finding), [start]);
  }
  for (const alike of starts.values()) alike.sort((a, b) => a - b);
  return starts;
}

/** The edits of a text in its order, and by how much longer it is before each of them, and after all. */
interface Shift {
  readonly edits: readonly Edit[];
  readonly growth: readonly number[];
}

const UNMOVED: Shift = { edits: [], growth: [0] };

function shiftOf(own: readonly Edit[]): Shift {
  const edits = inTextOrder(own);
  const growth = [0];
  let longer = 0;
  for (const { span, text } of edits) {
    longer += text.length - (span.end - span.start);
    growth.push(longer);
  }
  return { edits, growth };
}

/** The stretch, after edits, of a place and of the edits that touch it. */
function moved(
  { start, end }: Span,
  { edits, growth }: Shift,
): { readonly start: number; readonly end: number } {
  const first = firstIndex(edits.length, (index) => (edits[index] as Edit).span.end >= start);
  const past = firstIndex(edits.length, (index) => (edits[index] as Edit).span.start > end);
  return {
    start: Math.min(start, edits[first]?.span.start ?? start) + (growth[first] ?? 0),
    end: Math.max(end, edits[past - 1]?.span.end ?? end) + (growth[past] ?? 0),
  };
}
