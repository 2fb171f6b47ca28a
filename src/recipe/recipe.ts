/*
 * recipe/: what was meant. Names found, `like` followed, sums done, defaults filled in.
 * In: trees of files. Out: envelopes and papers in which nothing is optional; lengths mm, masses g, grammages g/m².
 * Refuses to know: how paper folds, and the disk (it is handed a reader).
 */
import type { Span } from '../text/span.js';
import type { Units } from '../measure/unit.js';
import type { Stated } from './origin.js';

/** Width and height in mm. Of a card and a face: width along the flap's hinge, height across it. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

export type FlapShape =
  | { readonly kind: 'pointed' }
  | { readonly kind: 'rounded'; readonly radius: number }
  /** `cut` is taken off the tip along the flap's height; `radius` rounds the two corners the cut leaves (0: not). */
  | { readonly kind: 'blunt'; readonly cut: number; readonly radius: number };

export type CornerTreatment = 'folded' | 'notched';

/** A paper as meant; null is what nobody says. */
export interface Paper {
  readonly name: string;
  readonly span: Span;
  readonly title: string;
  readonly sheet: Stated<Size> | null;
  /** g/m² */
  readonly weight: Stated<number> | null;
  /** mm */
  readonly caliper: Stated<number> | null;
  readonly grain: 'long' | 'short' | null;
  readonly price: number | null;
  readonly stock: number | null;
  /** What it states itself, then what it is `like`, the nearest first. */
  readonly layers: readonly Layer[];
}

/** A sheet's thickness in mm: stated by the paper, estimated from its weight, or assumed for want of both. */
export interface Caliper {
  readonly value: number;
  readonly basis: 'stated' | 'estimated' | 'assumed';
}

/** One `expect`. `value` and `tolerance` are in the inner unit of the name's dimension (mm, mm², g, plain). */
export interface Expectation {
  readonly name: string;
  readonly compare: '=' | '<' | '<=' | '>' | '>=';
  readonly value: number;
  readonly tolerance: number | null;
  /** Covers the whole `expect`. */
  readonly span: Span;
  readonly valueSpan: Span;
  /** The style that states it, or null when the envelope does. */
  readonly from: string | null;
}

/** A class of post that `post` names. */
export interface NamedPost {
  /** The class's name, from stock/post-classes.ts. */
  readonly post: string;
  /** Covers the name. */
  readonly span: Span;
}

/** One `expect post`. */
export interface PostExpectation {
  /** The class's name, from stock/post-classes.ts. */
  readonly post: string;
  /** Covers the whole `expect`. */
  readonly span: Span;
  /** The style that states it, or null when the envelope does. */
  readonly from: string | null;
}

/** A property as one block states it. */
export interface Entry {
  /** `default` puts it back; `broken` has been reported. */
  readonly state: 'stated' | 'default' | 'broken';
  readonly value: unknown;
  /** Covers the value. */
  readonly span: Span;
}

/** What one block states by itself, by the names of the properties. */
export interface Layer {
  /** The block's name; null for the envelope's or the paper's own. */
  readonly from: string | null;
  readonly entries: ReadonlyMap<string, Entry>;
}

/** An envelope as meant: every property has a value and an origin. */
export interface Envelope {
  readonly name: string;
  /** Covers the name in its header. */
  readonly span: Span;
  /** Covers the whole statement, from its first word to its `}`. */
  readonly statement: Span;
  /** The units of the file that states it: those in which its lengths are shown, and by which defaults go. */
  readonly units: Units;
  readonly title: Stated<string>;
  readonly note: Stated<readonly string[]>;
  readonly tags: Stated<readonly string[]>;
  /** Turned as it goes in: width along the hinge. */
  readonly card: Stated<Size>;
  readonly bulk: Stated<number>;
  readonly contents: Stated<number | null>;
  readonly depth: Stated<number>;
  readonly ease: Stated<Size>;
  /** The wished outside size: card plus ease, or the stated face. */
  readonly face: Stated<Size>;
  /** The wished seam; with a fixed blank, what that blank leaves unless stated. */
  readonly seam: Stated<number>;
  /** A fixed blank, or null where it is derived. Width runs along the edge from the bottom to the right corner. */
  readonly blank: Stated<Size | null>;
  /** Fixed marks, or null where derived: [left, right] for the sides. */
  readonly sideMarks: Stated<readonly [left: number, right: number] | null>;
  readonly sealMark: Stated<number | null>;
  readonly bottomMark: Stated<number | null>;
  readonly opens: Stated<'side' | 'end'>;
  readonly shift: Stated<number>;
  /** A stated shape, or null where a tip is cut only when needed. */
  readonly flap: Stated<FlapShape | null>;
  readonly bottom: Stated<FlapShape | null>;
  readonly sides: Stated<FlapShape | null>;
  readonly corners: Stated<{ readonly bottom: CornerTreatment; readonly seal: CornerTreatment }>;
  readonly fasten: Stated<'glue' | 'tuck' | 'seal'>;
  readonly step: Stated<number>;
  readonly tolerance: Stated<number>;
  readonly paper: Stated<Paper | null>;
  readonly caliper: Caliper;
  readonly tape: Stated<number>;
  /** How far a lining lies inside the edges, or null where there is none. */
  readonly liner: Stated<number | null>;
  readonly linerPaper: Stated<Paper | null>;
  readonly linerCaliper: Caliper;
  /** The classes of post that must take it. */
  readonly post: Stated<readonly NamedPost[]>;
  /** Its own, and those of every style along its `like`. */
  readonly expects: readonly Expectation[];
  readonly expectsPost: readonly PostExpectation[];
  /** All that it was worked out from: what it states itself, then what it is `like`, the nearest first. */
  readonly layers: readonly Layer[];
}
