import type { FlapName, FlapRecord, Folding } from '../folding/folding.js';
import type { Point } from '../plane/point.js';
import type { Mark } from './drawing.js';
import { edgeDimensions, EXTENSION_GAP, inBothSystems, LEVEL, type Measures } from './edge-dimensions.js';

/**
 * The dimensions about a blank whose corners are given, on the page: each flap's marks from its corner along the edge that
 * follows it counter-clockwise (both edges are alike), and two of the blank's sides.
 */
export const blankDimensions = (
  folding: Folding,
  corners: FlapRecord<Point>,
  measures: Measures,
): readonly Mark[] =>
  AROUND.flatMap(({ flap, next }) =>
    edgeDimensions(
      corners[flap],
      corners[next],
      inBothSystems(lengths(folding, flap), measures.ruler),
      measures,
    ),
  );

/** How far these reach out from the blank's edges, in mm on the page. */
export const dimensionsReach = (folding: Folding): number =>
  Math.max(...AROUND.map(({ flap }) => lengths(folding, flap).length)) * LEVEL + EXTENSION_GAP;

/** The corners in the order of the outline, each with the one after it, and the side of the blank between them. */
export const AROUND: readonly {
  readonly flap: FlapName;
  readonly next: FlapName;
  readonly side: 'width' | 'height' | null;
}[] = [
  { flap: 'bottom', next: 'right', side: 'width' },
  { flap: 'right', next: 'seal', side: null },
  { flap: 'seal', next: 'left', side: null },
  { flap: 'left', next: 'bottom', side: 'height' },
];

/** What may be dimensioned along the edge after a corner, from that corner, in mm of the blank; 0 where it has no such. */
export interface EdgeLengths {
  readonly cut: number;
  readonly second: number;
  readonly first: number;
  readonly side: number;
}

/** In their order along the edge, the nearest to the corner first. */
export const edgeLengths = ({ made }: Folding, flap: FlapName): EdgeLengths => {
  const side = AROUND.find((edge) => edge.flap === flap)?.side;
  return {
    cut: made.tips[flap].cutMark,
    second: made.second?.[flap].alongEdge ?? 0,
    first: made.first[flap].alongEdge,
    side: side ? made.blank[side] : 0,
  };
};

const lengths = (folding: Folding, flap: FlapName): readonly number[] =>
  Object.values(edgeLengths(folding, flap)).filter((length) => length > 0);
