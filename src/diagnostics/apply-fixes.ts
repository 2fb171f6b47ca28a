import { applyEdits, type Edit, touch } from '../text/edit.js';
import { type Source, source } from '../text/source.js';
import type { Diagnostic } from './diagnostic.js';

/** What is found in some texts, and in what they use. */
export type Look = (sources: readonly Source[]) => readonly Diagnostic[];

export interface Mended {
  /** The texts in their order; one in which nothing was mended is the one that was given. */
  readonly sources: readonly Source[];
  /** The findings that were mended, each as it was found just before. */
  readonly fixed: readonly Diagnostic[];
}

/** How often the texts are looked at, at most; edits that do not serve are told from those that do by trying. */
const MOST_LOOKS = 100;

/**
 * Applies the edits that findings carry, those that lie in the given texts, until there are none that serve: after them
 * their findings are gone and, taken together, no more is wrong than before. Edits of one finding are applied together or
 * not at all; those of two findings that touch, one after the other.
 */
export function applyFixes(given: readonly Source[], look: Look): Mended {
  let state: State = { sources: given, found: look(given) };
  const fixed: Diagnostic[] = [];
  let looks = 1;
  const attempt: Attempt = (sources, edits) => {
    if (looks++ >= MOST_LOOKS) return null;
    const edited = sources.map((each) => withEdits(each, edits));
    return { sources: edited, found: look(edited) };
  };
  for (;;) {
    const taken = serving(candidates(state), state, { taken: [], after: state }, attempt);
    if (taken.taken.length === 0) return { sources: state.sources, fixed };
    fixed.push(...taken.taken);
    state = taken.after;
  }
}

/** Texts, and what is found in them. */
interface State {
  readonly sources: readonly Source[];
  readonly found: readonly Diagnostic[];
}

/** Some texts with edits; null when enough has been tried. */
type Attempt = (sources: readonly Source[], edits: readonly Edit[]) => State | null;

/** Findings whose edits serve together, and what there is after them. */
interface Taken {
  readonly taken: readonly Diagnostic[];
  readonly after: State;
}

/** Findings that carry edits of the texts, each apart from those before it. */
function candidates({ sources, found }: State): readonly Diagnostic[] {
  const earlier: Edit[] = [];
  return found.filter(({ fix }) => {
    const free = (edit: Edit): boolean =>
      sources.includes(edit.span.source) && !earlier.some((other) => touch(edit, other));
    if (fix === null || !fix.every(free)) return false;
    earlier.push(...fix);
    return true;
  });
}

/** Takes a group of findings with those taken already; where they do not serve together, each half of it by itself. */
function serving(group: readonly Diagnostic[], before: State, so: Taken, attempt: Attempt): Taken {
  if (group.length === 0) return so;
  const together = [...so.taken, ...group];
  const edits = together.flatMap(({ fix }) => fix ?? []);
  const after = attempt(before.sources, edits);
  if (after === null) return so;
  const isMended = !isAnyStill(together, after.found, edits);
  if (isMended && !isWorse(after.found, so.after.found)) return { taken: together, after };
  if (group.length === 1) return so;
  const middle = group.length >> 1;
  const first = serving(group.slice(0, middle), before, so, attempt);
  return serving(group.slice(middle), before, first, attempt);
}

function withEdits(given: Source, edits: readonly Edit[]): Source {
  const own = edits.filter(({ span }) => span.source === given);
  return own.length === 0 ? given : source(given.name, applyEdits(given.text, own));
}

/** More errors, or as many and more warnings. */
function isWorse(after: readonly Diagnostic[], before: readonly Diagnostic[]): boolean {
  const more = (severity: Diagnostic['severity']): number => count(after, severity) - count(before, severity);
  return (more('error') || more('warning')) > 0;
}

const count = (found: readonly Diagnostic[], wanted: Diagnostic['severity']): number =>
  found.filter(({ severity }) => severity === wanted).length;

/** Whether one of some findings is there after edits too: the same is said, of where it stood. */
function isAnyStill(
  before: readonly Diagnostic[],
  after: readonly Diagnostic[],
  edits: readonly Edit[],
): boolean {
  const starts = new Map<string, number[]>();
  for (const finding of after) {
    const alike = starts.get(said(finding));
    if (alike) alike.push(finding.primary.span.start);
    else starts.set(said(finding), [finding.primary.span.start]);
  }
  return before.some((finding) => {
    const alike = starts.get(said(finding));
    if (alike === undefined) return false;
    const { start, end } = moved({ span: finding.primary.span, text: '' }, edits);
    return alike.some((at) => at >= start && at < Math.max(end, start + 1));
  });
}

/** What a finding says, and of which file. */
const said = ({ problem, message, primary }: Diagnostic): string =>
  JSON.stringify([problem.name, primary.span.source.name, message]);

/** The stretch, after edits, of a place and of the edits that touch it. */
function moved(place: Edit, edits: readonly Edit[]): { readonly start: number; readonly end: number } {
  const inIt = edits.filter((edit) => touch(edit, place));
  const start = Math.min(place.span.start, ...inIt.map(({ span }) => span.start));
  const end = Math.max(place.span.end, ...inIt.map(({ span }) => span.end));
  const above = edits.filter(
    (edit) => edit.span.source === place.span.source && edit.span.end <= start && !inIt.includes(edit),
  );
  return { start: start + growth(above), end: end + growth(above) + growth(inIt) };
}

/** By how much edits make a text longer. */
const growth = (edits: readonly Edit[]): number =>
  edits.reduce((sum, { span, text }) => sum + text.length - (span.end - span.start), 0);
