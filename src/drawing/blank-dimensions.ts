import type { FlapName, FlapRecord, Folding } from '../folding/folding.js';
import type { Point } from '../plane/point.js';
import type { Mark } from './drawing.js';
import { edgeDimensions, EXTENSION_GAP, LEVEL, type Measures } from './edge-dimensions.js';

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
    edgeDimensions(corners[flap], corners[next], lengths(folding, flap), measures),
  );

/** How far these reach out from the blank's edges, in mm on the page. */
export const dimensionsReach = (folding: Folding): number =>
  Math.max(...AROUND.map(({ flap }) => lengths(folding, flap).length)) * LEVEL + EXTENSION_GAP;

/** The corners in the order of the outline, each with the one after it, and the side of the blank between them. */
const AROUND: readonly {
  readonly flap: FlapName;
  readonly next: FlapName;
  readonly side: 'width' | 'height' | null;
}[] = [
  { flap: 'bottom', next: 'right', side: 'width' },
  { flap: 'right', next: 'seal', side: null },
  { flap: 'seal', next: 'left', side: null },
  { flap: 'left', next: 'bottom', side: 'height' },
];

/** What is dimensioned along the edge after a corner, from that corner, shortest first, in mm of the blank. */
function lengths({ made }: Folding, flap: FlapName): readonly number[] {
  const side = AROUND.find((edge) => edge.flap === flap)?.side;
  const all = [
    made.tips[flap].cutMark,
    made.second?.[flap].alongEdge ?? 0,
    made.first[flap].alongEdge,
    side ? made.blank[side] : 0,
  ];
  return all.filter((length) => length > 0);
}
