import type { HalfPlane } from '../plane/clip.js';
import type { CornerTreatment } from '../recipe/recipe.js';
import { firstScoreAt, isSide, NEIGHBOURS, OUTWARD, outerScoreAt } from './corner-directions.js';
import type { AsMade, FlapName } from './folding.js';

/**
 * How far the cut on the side pieces stands back from the end score, in mm: `max(0.5, 2 × caliper)`. It is also the relief
 * where two walls of a box meet: the end wall, bent up, takes up to one thickness of it, and the rest is for the hand.
 */
export const standBack = (caliper: number): number => Math.max(0.5, 2 * caliper);

/** Radius of the round end of a notch, where a sharp one would tear: 1.5 mm across, or what the stand-back allows. */
export const notchRadius = (caliper: number): number => Math.min(0.75, standBack(caliper));

/**
 * Beyond the outermost score and the stand-back, the edge of a notched seal or bottom piece leans in 1 in this. (A wall
 * keeps its width: leaning from the first score would leave pinholes at a box's corners.)
 */
const LEAN = 8;

/** What becomes of the corner pieces beside an end flap. */
export const treatmentAt = ({ corners }: AsMade, end: FlapName): CornerTreatment =>
  end === 'seal' ? corners.seal : corners.bottom;

/** The corner's end flap: of a side flap and its neighbour, the one that is not the side flap. */
export const endOf = (flap: FlapName, neighbour: FlapName): FlapName => (isSide(flap) ? neighbour : flap);

/**
 * The half-planes that keep a flap (with its wall) off its corner pieces on both sides: an end flap ends at the side
 * scores and leans in where there is a notch; a side flap stands back from a notch and keeps a folded ear.
 */
export function besideCorners(made: AsMade, flap: FlapName, caliper: number): readonly HalfPlane[] {
  const [one, other] = NEIGHBOURS[flap];
  return [...besideCorner(made, flap, one, caliper), ...besideCorner(made, flap, other, caliper)];
}

function besideCorner(
  made: AsMade,
  flap: FlapName,
  neighbour: FlapName,
  caliper: number,
): readonly HalfPlane[] {
  const notched = treatmentAt(made, endOf(flap, neighbour)) === 'notched';
  const [n, m] = [OUTWARD[flap], OUTWARD[neighbour]];
  const limit = firstScoreAt(made, neighbour);
  if (isSide(flap)) return notched ? [{ a: m.x, b: m.y, c: limit - standBack(caliper) }] : [];
  const upright = { a: m.x, b: m.y, c: limit };
  if (!notched) return [upright];
  const leanFrom = outerScoreAt(made, flap) + standBack(caliper);
  return [upright, { a: m.x + n.x / LEAN, b: m.y + n.y / LEAN, c: limit + leanFrom / LEAN }];
}
