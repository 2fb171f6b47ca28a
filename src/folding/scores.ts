import { ceilToStep, roundToStep } from '../measure/ruler.js';
import { EDGES } from './corner-directions.js';
import type { AsMade, FlapName, FlapRecord, ScoreLine } from './folding.js';

/** The score that a mark draws: marks are measured along the edges, scores square to themselves. */
export const scoreFromMark = (alongEdge: number): ScoreLine => ({
  alongEdge,
  fromCorner: alongEdge / Math.SQRT2,
});

/** The mark for a score wished at a distance from its corner, rounded to the ruler. */
export const markFor = (fromCorner: number, step: number): number =>
  roundToStep(fromCorner * Math.SQRT2, step);

/** The second scores of a box: each mark less the wall along the edge, rounded up so that no wall is too shallow. */
export function secondScores(
  first: FlapRecord<ScoreLine>,
  depth: number,
  step: number,
): FlapRecord<ScoreLine> {
  const wall = ceilToStep(depth * Math.SQRT2, step);
  const nearer = (flap: FlapName): ScoreLine => scoreFromMark(first[flap].alongEdge - wall);
  return { left: nearer('left'), right: nearer('right'), seal: nearer('seal'), bottom: nearer('bottom') };
}

/** By how much the marks on one edge of the blank pass each other. */
export interface Passing {
  readonly between: readonly [FlapName, FlapName];
  /** Length of the edge. */
  readonly edge: number;
  /** First mark of the one plus outermost mark of the other, less the edge: negative where the creases do not cross. */
  readonly passes: number;
}

/** The marks on each of the blank's four edges: bottom right, top right, top left, bottom left. */
export const passingMarks = ({
  blank,
  first,
  second,
}: Pick<AsMade, 'blank' | 'first' | 'second'>): readonly Passing[] =>
  EDGES.map(({ between, side }) => {
    const [end, sideFlap] = between;
    const edge = blank[side];
    return { between, edge, passes: first[end].alongEdge + (second ?? first)[sideFlap].alongEdge - edge };
  });

/** The tightest crossing of the four. */
export const crossing = (made: Pick<AsMade, 'blank' | 'first' | 'second'>): number =>
  Math.min(...passingMarks(made).map(({ passes }) => passes));
