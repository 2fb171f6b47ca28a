import { applyEdits, bySource, type Edit } from '../text/edit.js';
import { type Source, source } from '../text/source.js';
import type { Span } from '../text/span.js';
import type { Diagnostic } from './diagnostic.js';
import { isAnyStill } from './still-found.js';

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
    const edited = withEdits(sources, edits);
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
  const taken = new Map(sources.map((source) => [source, new Set<number>()]));
  const isFree = ({ span }: Edit): boolean => {
    const own = taken.get(span.source);
    return own !== undefined && !offsetsOf(span).some((offset) => own.has(offset));
  };
  return found.filter(({ fix }) => {
    if (fix === null || !fix.every(isFree)) return false;
    for (const { span } of fix) for (const offset of offsetsOf(span)) taken.get(span.source)?.add(offset);
    return true;
  });
}

/** The places between characters from a span's start to its end: edits touch if they share one. */
const offsetsOf = ({ start, end }: Span): readonly number[] =>
  Array.from({ length: end - start + 1 }, (_, index) => start + index);

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

function withEdits(sources: readonly Source[], edits: readonly Edit[]): readonly Source[] {
  const groups = bySource(edits);
  return sources.map((given) => {
    const own = groups.get(given);
    return own === undefined ? given : source(given.name, applyEdits(given.text, own));
  });
}

/** More errors, or as many and more warnings. */
function isWorse(after: readonly Diagnostic[], before: readonly Diagnostic[]): boolean {
  const more = (severity: Diagnostic['severity']): number => count(after, severity) - count(before, severity);
  return (more('error') || more('warning')) > 0;
}

const count = (found: readonly Diagnostic[], wanted: Diagnostic['severity']): number =>
  found.filter(({ severity }) => severity === wanted).length;
