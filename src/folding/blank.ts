import type { Point } from '../plane/point.js';
import type { Envelope, Size } from '../recipe/recipe.js';
import type { FlapRecord } from './folding.js';

/**
 * The side of the square that a face needs, in mm: `(W + H + 2d + 2s)/√2 + 2·seam`.
 * A rectangle of `W × H` turned by 45° needs `(W + H)/√2`; walls, a longer seal flap and the seams come on top.
 */
export const squareFor = (face: Size, depth: number, shift: number, seam: number): number =>
  (face.width + face.height + 2 * depth + 2 * shift) / Math.SQRT2 + 2 * seam;

/** The wished blank, before it is rounded to the ruler. */
export const wishedBlank = ({ face, depth, shift, seam }: Envelope): number =>
  squareFor(face.value, depth.value, shift.value, seam.value);

/** The blank's corners in its own frame: a square stands on its bottom corner. */
export function blankCorners({ width, height }: Size): FlapRecord<Point> {
  const half = (width + height) / 2 / Math.SQRT2;
  const off = (width - height) / 2 / Math.SQRT2;
  return {
    bottom: { x: -off, y: -half },
    right: { x: half, y: off },
    seal: { x: off, y: half },
    left: { x: -half, y: -off },
  };
}
