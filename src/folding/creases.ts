import { clipSegment, type HalfPlane, halfPlanesOf } from '../plane/clip.js';
import type { Segment } from '../plane/point.js';
import { besideCorners, notchRadius, standBack, treatmentAt } from './corners.js';
import { firstScoreAt, isSide, NEIGHBOURS, OUTWARD, outerScoreAt } from './corner-directions.js';
import { FLAP_NAMES, type AsMade, type Crease, type FlapName } from './folding.js';
import { beyond, blankOutline, within } from './outline.js';

/**
 * Every crease of the flat blank. Where an ear is kept, four creases meet at right angles, three valleys and one
 * mountain (Kawasaki and Maekawa): the part of the end score that lies beyond the side score is the odd one.
 */
export const creases = (made: AsMade, caliper: number): readonly Crease[] =>
  FLAP_NAMES.flatMap((flap) => [
    ...(isSide(flap) ? sideScore(made, flap, caliper) : endScore(made, flap, caliper)),
    ...(made.second
      ? valley(made, flap, 'second', outerScoreAt(made, flap), besideCorners(made, flap, caliper))
      : []),
  ]);

/** A side's first score, in up to three parts: it runs on through each folded ear to the blank's edge. */
const sideScore = (made: AsMade, side: FlapName, caliper: number): readonly Crease[] => {
  const at = firstScoreAt(made, side);
  const ends = NEIGHBOURS[side];
  const throughEars = ends.flatMap((end) =>
    treatmentAt(made, end) === 'folded'
      ? valley(made, side, 'first', at, [beyond(end, firstScoreAt(made, end))])
      : [],
  );
  // A notch's round end leaves paper beside the score; the score runs to where that ends.
  const roundEnd = (end: FlapName): number =>
    treatmentAt(made, end) === 'notched' ? standBack(caliper) - notchRadius(caliper) : 0;
  const middle = valley(
    made,
    side,
    'first',
    at,
    ends.map((end) => within(end, firstScoreAt(made, end) - roundEnd(end))),
  );
  return [...middle, ...throughEars];
};

/** An end's first score, and its odd parts through folded ears. */
const endScore = (made: AsMade, end: FlapName, caliper: number): readonly Crease[] => {
  const at = firstScoreAt(made, end);
  const odd = NEIGHBOURS[end].flatMap((side) =>
    treatmentAt(made, end) === 'folded'
      ? valley(made, end, 'first', at, [beyond(side, firstScoreAt(made, side))])
      : [],
  );
  return [
    ...valley(made, end, 'first', at, besideCorners(made, end, caliper)),
    ...odd.map((crease): Crease => ({ ...crease, sense: 'mountain' })),
  ];
};

/** The part of a flap's score that lies on the blank and in all half-planes, from left to right or bottom to top. */
function valley(
  made: AsMade,
  flap: FlapName,
  order: Crease['order'],
  at: number,
  halfPlanes: readonly HalfPlane[],
): readonly Crease[] {
  const { x, y } = OUTWARD[flap];
  const reach = made.diagonal;
  const line: Segment = isSide(flap)
    ? { from: { x: x * at, y: -reach }, to: { x: x * at, y: reach } }
    : { from: { x: -reach, y: y * at }, to: { x: reach, y: y * at } };
  const segment = clipSegment(line, [...halfPlanesOf(blankOutline(made)), ...halfPlanes]);
  return segment ? [{ flap, order, ...segment, sense: 'valley' }] : [];
}
