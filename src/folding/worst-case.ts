/*
 * What a hand with a ruler may lose when each side of the blank and each mark along an edge is off by at most δ (the
 * recipe's tolerance) and corners are square. A mark off by δ moves its score by δ/√2.
 */

/** Crossing and the seam's overlap: two marks and an edge. */
export const crossingLoss = (tolerance: number): number => 3 * tolerance;

/** Room in width or height: the blank's diagonal and two scores. */
export const roomLoss = (tolerance: number): number => 2 * Math.SQRT2 * tolerance;

/** Depth of a wall: two marks. */
export const depthLoss = (tolerance: number): number => Math.SQRT2 * tolerance;

/** A flap's stop before the opposite fold; a cut tip may be off as well. */
export const flapStopLoss = (tolerance: number, tipIsCut: boolean): number =>
  (5 * tolerance) / Math.SQRT2 + (tipIsCut ? tolerance : 0);

/** Closure on the centre line; each cut tip may be off as well. */
export const closureLoss = (tolerance: number, cutTips: number): number =>
  (3 * Math.SQRT2 + cutTips) * tolerance;
