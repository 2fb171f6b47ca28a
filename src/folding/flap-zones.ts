import { clip, type HalfPlane } from '../plane/clip.js';
import { offsetConvex } from '../plane/offset-convex.js';
import { distance } from '../plane/point.js';
import { area, counterClockwise, type Polygon } from '../plane/polygon.js';
import { subtract } from '../plane/region.js';
import { alongEdges, fromEdges } from './edge-frame.js';
import type { Folding, GlueLine } from './folding.js';
import { foldOver } from './pieces.js';
import { seams } from './seams.js';

/** Nothing is printed, stamped or glued nearer to a score or to an edge of the paper than this, in mm (our judgement). */
export const CLEAR_OF_SCORES = 3;

/** What is narrower than this on average is too small to decorate, in mm (our judgement). */
const NARROWEST = 5;

/** Where the seal flap may be decorated, as polygons on the flat blank, counter-clockwise. */
export interface FlapZones {
  /** To print or stamp: clear of the flap's hinge and edges, and of its glue. Convex; null where nothing is left. */
  readonly print: Polygon | null;
  /**
   * The parts of it for raised work (embossing, wax): clear of the seams that lie beneath when the flap is closed. A seam
   * in the midst of a part is a hole in it, a clockwise polygon.
   */
  readonly raised: readonly Polygon[];
}

/** The zones of the seal flap. Text in them is read with the hinge up, from the show side, once the flap is closed. */
export function flapZones(folding: Folding): FlapZones {
  const { made, glue } = folding;
  const closed = offsetConvex(folding.closedFlaps.seal, -CLEAR_OF_SCORES);
  const unfolded = (polygon: Polygon): Polygon =>
    counterClockwise(polygon.map((at) => foldOver(made, 'seal', at)));
  const print = clip(unfolded(closed), glue.filter(({ on }) => on === 'seal').map(offStrip));
  if (isNarrow(print)) return { print: null, raised: [] };
  const beneath = seams(folding)
    .filter(({ strip }) => strip.on !== 'seal')
    .map((seam) => unfolded(offsetConvex(seam.closed, CLEAR_OF_SCORES)));
  const raised = subtract(
    [print.map(alongEdges)],
    beneath.map((seam) => seam.map(alongEdges)),
  )
    .map((part) => part.map(fromEdges))
    .filter((part) => area(part) < 0 || !isNarrow(part));
  return { print, raised };
}

/** The half-plane on the hinge's side of a strip: strips lie along edges, so that nothing useful is left beyond them. */
function offStrip({ from, to, width }: GlueLine): HalfPlane {
  const length = distance(from, to);
  const [a, b] = [(from.y - to.y) / length, (to.x - from.x) / length];
  // The hinge lies below the tip, in the blank's frame.
  const sign = b < 0 ? -1 : 1;
  return { a: a * sign, b: b * sign, c: sign * (a * from.x + b * from.y) - width / 2 };
}

/** Of a strip, twice its area over its girth is its width; of a square, half its side. */
function isNarrow(polygon: Polygon): boolean {
  const girth = polygon.reduce(
    (sum, here, index) => sum + distance(here, polygon[(index + 1) % polygon.length] ?? here),
    0,
  );
  return polygon.length < 3 || (2 * area(polygon)) / girth < NARROWEST;
}
