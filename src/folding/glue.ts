import { distance, type Point } from '../plane/point.js';
import { common, type Interval, lengthOf, sectionAt } from '../plane/section.js';
import type { Envelope } from '../recipe/recipe.js';
import { blankCorners } from './blank.js';
import { type Closure, sectionAlongCentre, TAPE_CLEARANCE } from './closure.js';
import { firstScoreAt, OUTWARD, outwardOf } from './corner-directions.js';
import type { AsMade, FlapName, GlueLine, Piece } from './folding.js';
import { foldOver } from './pieces.js';
import { passingMarks } from './scores.js';

/** Tape keeps this far inside a flap's edge, in mm. */
const INSIDE = TAPE_CLEARANCE / 2;

/** The least length of a lower seam that holds, in mm (our judgement). */
export const SHORTEST_SEAM = 15;

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

/** Every strip of tape or line of glue, on the inside of the flat blank. */
export function glueLines(
  envelope: Envelope,
  made: AsMade,
  pieces: readonly Piece[],
  closed: Closure,
): readonly GlueLine[] {
  const width = envelope.tape.value;
  return [
    ...lowerSeams(made, width),
    ...(closed.centreSeam ? centre(made, pieces, width) : []),
    ...(envelope.fasten.value === 'glue' ? seal(made, pieces, width, closed) : []),
  ].filter(({ from, to }) => distance(from, to) > 0);
}

/**
 * On the bottom flap along its slanted edges, 1 mm in, from one tape width off the side fold to where the side flap
 * beneath ends: never beyond, or it glues the pocket shut.
 */
function lowerSeams(made: AsMade, width: number): readonly GlueLine[] {
  const end = seamLength(made) / Math.SQRT2 - width / 2 / Math.SQRT2;
  if (end <= width) return [];
  const inset = (INSIDE + width / 2) / Math.SQRT2;
  return passingMarks(made)
    .filter(({ between }) => between.includes('bottom'))
    .map(({ between: [, side] }): GlueLine => {
      const edge = (fromSideFold: number): Point => {
        const along = firstScoreAt(made, side) - fromSideFold - inset;
        const corner = blankCorners(made.blank);
        const out =
          outwardOf('bottom', corner.bottom) - Math.abs(along - outwardOf(side, corner.bottom)) - 2 * inset;
        return {
          x: OUTWARD[side].x * along + OUTWARD.bottom.x * out,
          y: OUTWARD[side].y * along + OUTWARD.bottom.y * out,
        };
      };
      return {
        name: `lower-${side as 'left' | 'right'}`,
        from: edge(width - inset),
        to: edge(end - inset),
        width,
      };
    });
}

/** On the right side flap, along the middle where it lies over the left one. */
function centre(made: AsMade, pieces: readonly Piece[], width: number): readonly GlueLine[] {
  const middle = blankCorners(made.blank).seal.x;
  const both = common(sectionAlongCentre(made, pieces, 'left'), sectionAlongCentre(made, pieces, 'right'));
  const strip = both && shortened(both, width / 2 + INSIDE);
  return strip
    ? [onFlap(made, 'right', 'centre', { x: middle, y: strip.from }, { x: middle, y: strip.to }, width)]
    : [];
}

/**
 * On the seal flap, only where it lies on glued paper: along both edges of a pointed tip; across a rounded or blunt
 * one.
 */
function seal(
  made: AsMade,
  pieces: readonly Piece[],
  width: number,
  { centreSeam, length }: Closure,
): readonly GlueLine[] {
  if (length <= width + INSIDE) return [];
  const tip = firstScoreAt(made, 'seal') - made.heights.seal;
  const middle = blankCorners(made.blank).seal.x;
  if (made.tips.seal.shape === 'pointed') {
    const start = tip + (INSIDE + width / 2) * Math.SQRT2 + width / 2;
    const end = tip + length / 2;
    const inset = (INSIDE + width / 2) * Math.SQRT2;
    return (['left', 'right'] as const).map((side) => {
      const at = (height: number): Point => ({
        x: middle + OUTWARD[side].x * (height - tip - inset),
        y: height,
      });
      return onFlap(made, 'seal', `seal-${side}`, at(start), at(Math.max(start, end)), width);
    });
  }
  const height = tip + INSIDE + width / 2;
  const gluedFlaps: readonly FlapName[] = centreSeam ? ['bottom', 'left', 'right'] : ['bottom'];
  const glued = gluedFlaps.map((flap) => chord(pieces, flap, height));
  const across = shortened(chord(pieces, 'seal', height - width / 2), INSIDE);
  const covered =
    across && glued.map((interval) => common(across, interval)).sort((a, b) => lengthOf(b) - lengthOf(a))[0];
  return covered
    ? [onFlap(made, 'seal', 'seal-tip', { x: covered.from, y: height }, { x: covered.to, y: height }, width)]
    : [];
}

const shortened = (interval: Interval | null, by: number): Interval | null =>
  interval && interval.to - interval.from > 2 * by
    ? { from: interval.from + by, to: interval.to - by }
    : null;

/** Where a level line meets a closed flap. */
function chord(pieces: readonly Piece[], flap: FlapName, y: number): Interval | null {
  const piece = pieces.find(({ kind, flap: name }) => kind === 'flap' && name === flap);
  return sectionAt(
    (piece?.folded ?? []).map((at) => ({ x: at.y, y: at.x })),
    y,
  );
}

/** A strip given on the closed envelope, put back on the flat blank (folding over is its own inverse). */
const onFlap = (
  made: AsMade,
  flap: FlapName,
  name: GlueLine['name'],
  from: Point,
  to: Point,
  width: number,
): GlueLine => ({ name, from: foldOver(made, flap, from), to: foldOver(made, flap, to), width });
