import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { blankWords } from '../folding/blank-words.js';
import type { Ruler } from '../measure/ruler.js';
import { position } from '../text/source.js';
import type { Span } from '../text/span.js';
import { consequenceWords } from './consequence-words.js';
import type {
  BatchChange,
  Changed,
  Consequence,
  Difference,
  EnvelopeChange,
  Place,
  Recipe,
  SharedEdit,
  WrittenChange,
} from './difference.js';
import { excerpt, excerpts } from './excerpts.js';
import { type FigureRow, figureRows } from './figure-rows.js';
import { tallyWords } from './tally.js';

/** A difference as people read it, in order: once as content, then set for a terminal, a review or a page. */
export interface Report {
  readonly summary: string;
  readonly shared: readonly SharedBlock[];
  readonly envelopes: readonly Chapter[];
  readonly batches: readonly BatchChapter[];
}

/** What became of one batch. */
export interface BatchChapter {
  readonly name: string;
  readonly kind: BatchChange['kind'];
  readonly at: At;
  readonly written: readonly WrittenRow[];
}

/** What was edited in one style or paper, as far as it reaches the same envelopes. */
export interface SharedBlock {
  readonly place: SharedEdit['place'];
  readonly written: readonly WrittenRow[];
  readonly reaches: readonly string[];
}

/** What became of one envelope. */
export interface Chapter {
  readonly name: string;
  /** The name it had, if it was renamed. */
  readonly formerName: string | null;
  readonly kind: EnvelopeChange['kind'];
  readonly consequences: readonly Consequence[];
  /** What that means, in sentences of ours. */
  readonly words: string;
  /** Where its name stands; null where it cannot be read. */
  readonly at: At | null;
  readonly written: readonly WrittenRow[];
  readonly figures: readonly FigureRow[];
  readonly findings: readonly FindingRow[];
}

export interface WrittenRow {
  readonly property: string;
  readonly before: Spelling | null;
  readonly after: Spelling | null;
  /** Where it is now, and where it was if that was elsewhere. */
  readonly where: readonly Where[];
}

/** A value as its author spelled it (a long one in part), and what it comes to where that does not tell. */
export interface Spelling {
  readonly text: string;
  readonly reading: string | null;
}

export interface Where {
  /** Null: now, and before as well if it was there before. */
  readonly side: 'before' | 'after' | null;
  readonly place: Place;
  readonly at: At;
}

export interface At {
  readonly file: string;
  readonly line: number;
}

export interface FindingRow {
  readonly came: boolean;
  readonly severity: Diagnostic['severity'];
  readonly rule: string;
  readonly message: string;
}

export const report = (difference: Difference): Report => ({
  summary: tallyWords(difference),
  shared: sharedBlocks(difference.shared),
  envelopes: difference.changes.map(chapter),
  batches: (difference.batches ?? []).map(({ name, kind, at, written }) => ({
    name,
    kind,
    at: atOf(at),
    written: written.map(writtenRow),
  })),
});

function sharedBlocks(edits: readonly SharedEdit[]): readonly SharedBlock[] {
  const alike = new Map<string, { readonly edit: SharedEdit; readonly written: WrittenRow[] }>();
  for (const edit of edits) {
    const key = JSON.stringify([edit.place, edit.reaches]);
    const block = alike.get(key) ?? { edit, written: [] };
    alike.set(key, block);
    block.written.push(writtenRow(edit.change));
  }
  return [...alike.values()].map(({ edit: { place, reaches }, written }) => ({ place, written, reaches }));
}

const chapter = (change: EnvelopeChange): Chapter =>
  (CHAPTERS[change.kind] as (change: EnvelopeChange) => Chapter)(change);

const CHAPTERS: {
  readonly [Kind in EnvelopeChange['kind']]: (change: Extract<EnvelopeChange, { kind: Kind }>) => Chapter;
} = {
  changed: changedChapter,
  renamed: changedChapter,
  added: ({ kind, name, after }) => ({
    ...bare(kind, name, blank(after)),
    at: atOf(after.envelope.span),
    findings: after.diagnostics.map((found) => findingRow(found, true)),
  }),
  removed: ({ kind, name, before }) => ({
    ...bare(kind, name, blank(before)),
    at: atOf(before.envelope.span),
  }),
  unreadable: ({ kind, name, side }) =>
    bare(
      kind,
      name,
      `Its file has mistakes in the ${side === 'before' ? 'older' : 'newer'} state: what became of it cannot be told.`,
    ),
};

const bare = (kind: EnvelopeChange['kind'], name: string, words: string): Chapter => ({
  name,
  formerName: null,
  kind,
  consequences: [],
  words,
  at: null,
  written: [],
  figures: [],
  findings: [],
});

function changedChapter(change: Changed): Chapter {
  const { kind, name, before, after, consequences } = change;
  return {
    name,
    formerName: before.envelope.name === name ? null : before.envelope.name,
    kind,
    consequences,
    words: consequenceWords(change),
    at: atOf(after.envelope.span),
    written: change.written.map(writtenRow),
    figures: figureRows(change.figures, rulerOf(after)),
    findings: [
      ...change.appeared.map((found) => findingRow(found, true)),
      ...change.went.map((found) => findingRow(found, false)),
    ],
  };
}

export const rulerOf = ({ envelope }: Recipe): Ruler => ({
  units: envelope.units,
  step: envelope.step.value,
});

const blank = (recipe: Recipe): string => `${blankWords(recipe.folding, rulerOf(recipe))}.`;

function writtenRow({ property, before, after }: WrittenChange): WrittenRow {
  const [older, newer] =
    before && after
      ? excerpts(before.text, after.text)
      : [before && excerpt(before.text), after && excerpt(after.text)];
  return {
    property,
    before: before && { text: older ?? '', reading: before.reading },
    after: after && { text: newer ?? '', reading: after.reading },
    where: whereOf({ property, before, after }),
  };
}

function whereOf({ before, after }: WrittenChange): readonly Where[] {
  const older = before && { side: 'before' as const, place: before.place, at: atOf(before.span) };
  const newer = after && { side: 'after' as const, place: after.place, at: atOf(after.span) };
  if (older && newer && !samePlace(older.place, newer.place)) return [older, newer];
  return newer ? [{ ...newer, side: null }] : older ? [older] : [];
}

const samePlace = (one: Place, other: Place): boolean =>
  one.kind === other.kind && (one.kind === 'here' || (other.kind !== 'here' && one.name === other.name));

const atOf = ({ source, start }: Span): At => ({ file: source.name, line: position(source, start).line });

const findingRow = ({ severity, problem, message }: Diagnostic, came: boolean): FindingRow => ({
  came,
  severity,
  rule: problem.name,
  message,
});
