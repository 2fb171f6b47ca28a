/*
 * diff/: what changed between two compilations of recipes, and what follows from it on paper.
 * In: the recipes of two sides, with their facts and findings. Out: a Difference, plain data; the same in the terminal, as
 * Markdown, HTML or JSON.
 * Refuses to know: files, git, and where a side came from.
 */
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Facts } from '../folding/facts.js';
import type { Folding } from '../folding/folding.js';
import type { Batch } from '../recipe/batch.js';
import type { Envelope } from '../recipe/recipe.js';
import type { Span } from '../text/span.js';

/** One envelope of a side, all the way. */
export interface Recipe {
  readonly envelope: Envelope;
  readonly folding: Folding;
  readonly facts: Facts;
  readonly diagnostics: readonly Diagnostic[];
}

/** What is compared: the envelopes of a side, and every finding about its files. */
export interface Side {
  readonly recipes: readonly Recipe[];
  readonly diagnostics: readonly Diagnostic[];
  readonly batches?: readonly { readonly batch: Batch }[];
  /** The texts of its files, where they are at hand: an envelope that one of them states is there, compiled or not. */
  readonly texts?: readonly string[];
}

/** What a change asks of whoever made the envelope before, the most far-reaching first. */
export const CONSEQUENCES = [
  /** Another blank, or another lining: cut anew. */
  'recut',
  /** Other paper for the same blank. */
  'restock',
  /** The same blank, other marks. */
  'rescore',
  /** The same marks, other tips or notches. */
  'retrim',
  /** The same paper as cut, other seams, tape or fastening. */
  'reglue',
  /** Only words: title, note, tags. */
  'wording',
  /** Written otherwise, and nothing follows for paper or words. */
  'none',
] as const;

export type Consequence = (typeof CONSEQUENCES)[number];

/**
 * Where something is written: in the envelope's own block, or in a style or a paper that others may share. (An envelope that it is
 * `like` counts as a style.)
 */
export type Place =
  | { readonly kind: 'here' }
  | { readonly kind: 'style'; readonly name: string }
  | { readonly kind: 'paper'; readonly name: string };

/** A value as it is written on one side. */
export interface WrittenValue {
  readonly place: Place;
  /** As its author spelled it. */
  readonly text: string;
  /** What it comes to as the ruler reads it, where the spelling alone does not tell (a `let`, a sum); else null. */
  readonly reading: string | null;
  readonly span: Span;
}

/** A statement that differs: null where a side leaves it out. */
export interface WrittenChange {
  /** As written: `ease`, `weight` (of a paper), `expect blank`. */
  readonly property: string;
  readonly before: WrittenValue | null;
  readonly after: WrittenValue | null;
}

/** A figure that came out otherwise, by its public name. Null: unknown, or it does not apply. */
export interface FigureChange {
  readonly name: string;
  readonly dimension: 'length' | 'area' | 'mass' | 'count';
  /** Two where the side flaps differ. In mm, mm², g or plain. */
  readonly before: readonly (number | null)[];
  readonly after: readonly (number | null)[];
}

export type EnvelopeChange =
  | { readonly kind: 'added'; readonly name: string; readonly after: Recipe }
  | { readonly kind: 'removed'; readonly name: string; readonly before: Recipe }
  /** On one side its file has mistakes of writing, so that it cannot be told what became of it. */
  | { readonly kind: 'unreadable'; readonly name: string; readonly side: 'before' | 'after' }
  | Changed;

/** An envelope that both sides have. `renamed`: the same content under another name. */
export interface Changed {
  readonly kind: 'changed' | 'renamed';
  /** The newer name. */
  readonly name: string;
  readonly before: Recipe;
  readonly after: Recipe;
  readonly written: readonly WrittenChange[];
  readonly figures: readonly FigureChange[];
  /** Findings by rule that only one side has. */
  readonly appeared: readonly Diagnostic[];
  readonly went: readonly Diagnostic[];
  /** All that apply, the most far-reaching first; at least one. */
  readonly consequences: readonly Consequence[];
}

/** One edit of something shared, and the envelopes that it reaches. */
export interface SharedEdit {
  readonly change: WrittenChange;
  readonly place: Exclude<Place, { readonly kind: 'here' }>;
  /** Names on the newer side, in order. */
  readonly reaches: readonly string[];
}

/** What became of a batch: what it asks for, not what follows for its sheets. */
export interface BatchChange {
  readonly kind: 'changed' | 'added' | 'removed';
  readonly name: string;
  /** Covers the name in its header, on the newer side where it is there. */
  readonly at: Span;
  readonly written: readonly WrittenChange[];
}

/** Everything that differs, by name. Empty lists: nothing does. */
export interface Difference {
  readonly changes: readonly EnvelopeChange[];
  readonly shared: readonly SharedEdit[];
  /** Left out where none differs. */
  readonly batches?: readonly BatchChange[];
  /** Not all of both sides could be read, so that there may be more. */
  readonly isPartial?: boolean;
}
