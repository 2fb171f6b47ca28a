import { clipSegment, type HalfPlane, halfPlanesOf } from '../plane/clip.js';
import { distance, type Segment } from '../plane/point.js';
import type { Envelope } from '../recipe/recipe.js';
import { blankCorners } from './blank.js';
import { type Closure, TAPE_CLEARANCE } from './closure.js';
import { firstScoreAt, OUTWARD } from './corner-directions.js';
import { pointedHeight } from './flaps.js';
import {
  type AsMade,
  eachFlap,
  type FlapName,
  type FlapRecord,
  type Folding,
  type GlueLine,
} from './folding.js';
import { within } from './outline.js';
import { foldOver } from './pieces.js';
import { passingMarks } from './scores.js';

/** Tape keeps this far inside a flap's edge, in mm. */
const INSIDE = TAPE_CLEARANCE / 2;

/** The least length of a lower seam that holds, in mm (our judgement). */
export const SHORTEST_SEAM = 15;

/** A tip at least this many tapes wide takes one strip across; a narrower one takes a strip along each slanted edge. */
const TAPES_ACROSS = 3;

/** A strip wished for on the closed envelope, before it is cut back to the paper that it joins. */
interface Wish {
  readonly name: GlueLine['name'];
  /** The flap that carries it, and those under it that it may be glued to: to the one that takes most of it. */
  readonly on: FlapName;
  readonly onto: readonly FlapName[];
  readonly line: Segment;
  readonly keepTo?: HalfPlane;
}

/** Width of the seam between each side flap and the bottom flap, at the tighter side: by how much their marks pass. */
export const seamOverlap = (made: AsMade): number =>
  Math.min(
    ...passingMarks(made)
      .filter(({ between }) => between.includes('bottom'))
      .map(({ passes }) => passes),
  );

/**
 * Usable length of each lower seam along the bottom flap's edge: it runs inward from the face's corner to the middle,
 * the side flap's tip, or where either flap ends.
 */
export const seamLength = ({ face, shift, heights }: AsMade): number =>
  Math.SQRT2 *
  Math.max(0, Math.min(face.width / 2, face.height / 2 + shift, heights.left, heights.right, heights.bottom));

/**
 * Every strip of tape or line of glue, on the inside of the flat blank. A strip lies wholly on its flap and over the
 * paper that it joins: one that reached beyond would glue the pocket shut.
 */
export function glueLines(
  envelope: Envelope,
  made: AsMade,
  closedFlaps: Folding['closedFlaps'],
  closed: Closure,
): readonly GlueLine[] {
  const width = envelope.tape.value;
  const under: readonly FlapName[] = closed.centreSeam ? ['bottom', 'left', 'right'] : ['bottom'];
  const wishes = [
    lowerSeam('left', made, width),
    lowerSeam('right', made, width),
    ...(closed.centreSeam ? [centreSeam(made)] : []),
    ...(envelope.fasten.value === 'glue' ? sealStrips(made, width, under) : []),
  ];
  const laid = eachFlap((flap) => halfPlanesOf(closedFlaps[flap]));
  const lines: GlueLine[] = [];
  for (const wish of wishes) lines.push(...cutBack(wish, width, made, laid));
  return lines;
}

/** On the bottom flap along a slanted edge, 1 mm in, beginning one tape width from the side fold. */
const lowerSeam = (side: 'left' | 'right', made: AsMade, width: number): Wish => ({
  name: `lower-${side}`,
  on: 'bottom',
  onto: [side],
  line: alongEdge('bottom', side, made, width),
  keepTo: within(side, firstScoreAt(made, side) - width),
});

/** On the right side flap, along the middle where it lies over the left one. */
function centreSeam({ blank, diagonal }: AsMade): Wish {
  const { x } = blankCorners(blank).seal;
  return {
    name: 'centre',
    on: 'right',
    onto: ['left'],
    line: { from: { x, y: -diagonal }, to: { x, y: diagonal } },
  };
}

/** On the seal flap: across a broad tip, or along both slanted edges. */
function sealStrips(made: AsMade, width: number, onto: readonly FlapName[]): readonly Wish[] {
  const { radius, shape, cut } = made.tips.seal;
  const tipWidth = shape === 'rounded' ? radius * Math.SQRT2 : 2 * cut;
  if (tipWidth < TAPES_ACROSS * width) {
    return (['left', 'right'] as const).map((side) => ({
      name: `seal-${side}`,
      on: 'seal',
      onto,
      line: alongEdge('seal', side, made, width),
    }));
  }
  // A rounding of r meets the slanted edges r(1 − 1/√2) above the tip: there the flap is broad.
  const tip = firstScoreAt(made, 'seal') - made.heights.seal;
  const y = tip + Math.max(INSIDE, radius * (1 - Math.SQRT1_2)) + width / 2;
  return [
    {
      name: 'seal-tip',
      on: 'seal',
      onto,
      line: { from: { x: -made.diagonal, y }, to: { x: made.diagonal, y } },
    },
  ];
}

/** A line 1 mm inside an end flap's slanted edge, on the closed envelope, from beside the tip to the side fold. */
function alongEdge(end: 'bottom' | 'seal', side: 'left' | 'right', made: AsMade, width: number): Segment {
  const corner = blankCorners(made.blank)[end];
  const inset = (INSIDE + width / 2) * Math.SQRT2;
  const tip = { x: corner.x, y: corner.y - OUTWARD[end].y * inset };
  const reach = pointedHeight(made, end);
  const along = { x: tip.x + OUTWARD[side].x * reach, y: tip.y - OUTWARD[end].y * reach };
  return { from: foldOver(made, end, along), to: foldOver(made, end, tip) };
}

/** The part of a wished strip whose whole width lies on its flap and on one flap beneath, put back on the flat blank. */
function cutBack(
  { name, on, onto, line, keepTo }: Wish,
  width: number,
  made: AsMade,
  laid: FlapRecord<readonly HalfPlane[]>,
): readonly GlueLine[] {
  const own = clipSegment(line, keepTo ? [...laid[on], keepTo] : laid[on], width / 2);
  const [longest] = onto
    .map((flap) => ({ flap, over: own && clipSegment(own, laid[flap], width / 2) }))
    .sort((a, b) => lengthOf(b.over) - lengthOf(a.over));
  if (!longest?.over) return [];
  const { flap, over } = longest;
  return [
    { name, on, onto: flap, from: foldOver(made, on, over.from), to: foldOver(made, on, over.to), width },
  ];
}

const lengthOf = (segment: Segment | null): number => (segment ? distance(segment.from, segment.to) : -1);
