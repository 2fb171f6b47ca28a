/*
 * emit/catalogue/: a folder of recipes as one book: PDF, HTML, CSV, Markdown, JSON.
 * In: for each recipe a row of figures and a leaf that is set once; the catalogue statement. Out: bytes, piece by piece.
 * Refuses to know: how an envelope folds, where leaves are kept, and who made them: here, in a worker, on another machine.
 *
 * Rows and leaves are plain data: what JSON keeps of them is all of them. Lengths mm, unless they lie on a page: points.
 */
import type { Facts } from '../../folding/facts.js';
import type { Units } from '../../measure/unit.js';
import type { Size } from '../../recipe/recipe.js';
import type { CutSheet } from '../cut-sheet/content.js';
import type { Found } from '../json/found.js';
import type { Item } from './page.js';

/** What a catalogue keeps at hand of each sound recipe: enough to order, to find and to tabulate it. Small on purpose. */
export interface Row {
  readonly name: string;
  readonly title: string;
  /** Its recipe file, from the project's root, with `/`. */
  readonly file: string;
  readonly line: number;
  readonly tags: readonly string[];
  /** Those in which its lengths are shown, and its ruler's step. */
  readonly units: Units;
  readonly step: number;
  /** As it goes in: width along the flap's hinge. */
  readonly card: Facts['card'];
  /** What the envelope takes at most, as made. */
  readonly room: { readonly width: number; readonly height: number; readonly depth: number | null };
  readonly depth: number;
  readonly blank: Size;
  /** Marks along the edge from each corner: the first, and the second of a box. */
  readonly marks: Readonly<Record<'left' | 'right' | 'seal' | 'bottom', readonly number[]>>;
  readonly paper: {
    readonly name: string;
    readonly title: string;
    /** Null where the paper states no sheet. */
    readonly sheet: (Size & { readonly copies: number }) | null;
  } | null;
  /** Classes of post that it names, or that are expected to take it: they do, or it would have no row. */
  readonly post: readonly string[];
  /** Warnings only: a recipe with an error has no row. */
  readonly findings: readonly Found[];
  /** How many pages its leaf has; at least one. */
  readonly pages: number;
  /** Names its leaf to whoever keeps it. */
  readonly leaf: string;
}

/** What is costly to make: the pages and the pictures of one sound recipe. It holds no line numbers, so that it outlives edits elsewhere. */
export interface Leaf {
  readonly facts: Facts;
  readonly sheet: CutSheet;
  /** The statement of the recipe, as written. */
  readonly source: string;
  /** SVG texts: the blank with its dimensions, the fold step by step. */
  readonly pictures: { readonly blank: string; readonly fold: string };
  /** Each page's items within LEAF, origin at its lower left corner, y up. */
  readonly pages: readonly (readonly Item[])[];
}

/** The box that a leaf's page is set in, in points: it goes onto A5 and onto half of a letter sheet; other pages scale it. */
export const LEAF: Size = { width: 326, height: 500 };

/** What one recipe file comes to. */
export interface FileLeaves {
  /** The file, from the project's root. */
  readonly file: string;
  readonly rows: readonly Row[];
  /** Every finding of the file that is an error, and warnings that belong to no sound recipe. */
  readonly findings: readonly Found[];
  /** All envelopes that it states, broken ones too: names are one space over a catalogue. */
  readonly names: readonly { readonly name: string; readonly line: number; readonly column: number }[];
}
