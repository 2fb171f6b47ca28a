/*
 * emit/cut-sheet/: the sheet that a person works from at the bench, once as content, then set for terminal and paper.
 * In: one compiled recipe. Out: plain data (what is said, in order), text of a given width, a PDF.
 * Refuses to know: how an envelope folds: every figure comes from its facts and its folding.
 */

/** A length, mass or size in the recipe's own units, and the same in the other system. */
export interface Reading {
  readonly read: string;
  readonly other: string;
}

export type Cell = string | Reading;

/** A label and what there is to say under it. */
export interface Term {
  readonly label: string;
  readonly text: string;
}

/** One thing to do at the bench: a short name and the words. */
export interface Step {
  readonly title: string;
  readonly text: string;
}

/** A row has a cell for every heading; the first cell names the row. */
export interface Table {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

export type Block =
  | { readonly kind: 'paragraph'; readonly text: string }
  | { readonly kind: 'terms'; readonly terms: readonly Term[] }
  | ({ readonly kind: 'table' } & Table)
  | { readonly kind: 'steps'; readonly steps: readonly Step[] };

export type SectionName =
  | 'findings'
  | 'cut'
  | 'marks'
  | 'corners'
  | 'zones'
  | 'tape'
  | 'dry-fold'
  | 'cautions'
  | 'steps'
  | 'margins'
  | 'finished';

export interface Section<Name extends string = SectionName> {
  readonly name: Name;
  readonly heading: string;
  readonly blocks: readonly Block[];
}

/** Everything a sheet for the bench says, in the order in which it is read. Text from the recipe is kept as it is. */
export interface Sheet<Name extends string = string> {
  /** The name of what it is about in its recipe; empty where it has none. */
  readonly name: string;
  readonly title: string;
  /** What it is about, in a sentence. */
  readonly summary: string;
  readonly notes: readonly string[];
  readonly sections: readonly Section<Name>[];
}

/** The sheet of one envelope. */
export type CutSheet = Sheet<SectionName>;
