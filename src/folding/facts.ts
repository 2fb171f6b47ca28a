import type { Caliper, Size } from '../recipe/recipe.js';
import type { FlapRecord, GlueLine, ScoreLine } from './folding.js';

/**
 * The numbers of one envelope as made, named as `expect` and the facts JSON name them.
 * Lengths mm, areas mm², masses g, full precision. Null is unknown, or does not apply.
 */
export interface Facts {
  readonly construction: 'diagonal';
  readonly units: 'mm' | 'cm' | 'in';
  readonly card: { readonly width: number; readonly height: number; readonly bulk: number };
  readonly face: Size;
  readonly depth: number;
  readonly shift: number;
  readonly blank: Size;
  /** First score, then the second of a box. */
  readonly scores: FlapRecord<readonly ScoreLine[]>;
  readonly flaps: FlapRecord<{
    readonly shape: 'pointed' | 'rounded' | 'blunt';
    readonly height: number;
    /** Length taken off the tip along its height; 0 where it is left whole. */
    readonly trimmed: number;
  }>;
  readonly margins: {
    /** By how much the marks on an edge pass each other, at the tightest edge. */
    readonly crossing: number;
    /** Width of the seam between a side flap and the bottom flap, at the tighter side. */
    readonly seamOverlap: number;
    readonly bareArea: number;
    /** Length on the centre line over which the closed seal flap lies on glued paper. */
    readonly closure: number;
    readonly roomWidth: number;
    readonly roomHeight: number;
    /** Null for a flat envelope. */
    readonly roomDepth: number | null;
  };
  readonly worst: {
    readonly crossing: number;
    readonly seamOverlap: number;
    readonly closure: number;
    readonly roomWidth: number;
    readonly roomHeight: number;
    readonly roomDepth: number | null;
    /** Least distance between a flap's tip and the fold opposite, in the worst case of the hand. */
    readonly flapStop: number;
  };
  /** As `worst.flapStop`, as made. */
  readonly flapStop: number;
  readonly thickness: number;
  readonly mass: number | null;
  readonly sheet: {
    readonly paper: string;
    readonly width: number;
    readonly height: number;
    readonly copies: number;
  } | null;
  /** A lining; null where none is asked for, or where its inset leaves none. */
  readonly liner: {
    /** The box of the paper to cut: along the flap's hinge, and across it. */
    readonly width: number;
    readonly height: number;
    readonly area: number;
    /** From its lower edge to where it folds: once, or twice in a box. */
    readonly folds: readonly number[];
    /** How far it reaches up the seal flap from that flap's outermost score (negative: short of it). */
    readonly reach: number;
    /** What its layers on the front panel and on the flap add to the closed envelope. */
    readonly thickness: number;
    readonly caliper: Caliper;
    readonly paper: string | null;
    /** From one sheet of its paper, in plain rows. */
    readonly copies: number | null;
    readonly mass: number | null;
  } | null;
  /** Greatest number of layers of the envelope's own paper on the back. */
  readonly layers: number;
  /** Usable length of each lower seam. */
  readonly seamLength: number;
  readonly diagonal: number;
  /** All the tape or glue line of one envelope. */
  readonly tapeLength: number;
  /** The same strip by strip. */
  readonly tape: readonly TapeStrip[];
  /** Area of the blank after trimming. */
  readonly area: number;
  readonly caliper: Caliper;
}

/** A strip of tape or line of glue, by the seam that it makes. */
export interface TapeStrip {
  readonly name: GlueLine['name'];
  readonly length: number;
  readonly width: number;
}
