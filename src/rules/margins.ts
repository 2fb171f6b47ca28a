import { cardFits, roomMargins } from './card-fits.js';
import { creasesCross, crossingMargin } from './creases-cross.js';
import { closureMargin, flapCloses } from './flap-closes.js';
import { flapOnFace, stopMargin } from './flap-on-face.js';
import type { Margin } from './margin.js';
import type { Rule } from './rule.js';
import { lengthMargin, overlapMargin, seamHolds } from './seam-holds.js';

/** A rule with the margins it guards. */
export interface Guarded {
  readonly rule: Rule;
  readonly margins: readonly Margin[];
  /** Rules whose margin is the same stretch of paper: where theirs is reported, this one's is not. */
  readonly sharedWith: readonly string[];
}

/** Every margin that a hand's inaccuracy eats into, by the rule that reports it once it is used up as made. */
export const MARGINS: readonly Guarded[] = [
  { rule: seamHolds, margins: [overlapMargin, lengthMargin], sharedWith: [] },
  { rule: flapCloses, margins: [closureMargin], sharedWith: [] },
  { rule: creasesCross, margins: [crossingMargin], sharedWith: ['seam-holds', 'flap-closes'] },
  { rule: flapOnFace, margins: [stopMargin], sharedWith: [] },
  { rule: cardFits, margins: roomMargins, sharedWith: [] },
];
