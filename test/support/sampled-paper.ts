/*
 * A second, plain implementation of the fold, for tests only. Points are sampled on the closed back and carried back
 * to the flat blank, in coordinates along the blank's edges, where a fold swaps the two about a constant. It reads the
 * marks, nothing of the polygons.
 */
import type { AsMade, FlapName } from '../../src/folding/folding.js';

/** x runs along the edge from the bottom to the right corner, y from the bottom to the left corner. */
export interface OnBlank {
  readonly x: number;
  readonly y: number;
}

/** In the order in which they are folded. */
const FLAPS: readonly FlapName[] = ['left', 'right', 'bottom', 'seal'];
const ENDS: readonly FlapName[] = ['seal', 'bottom'];

/** Distances of a point from a flap's corner along the two edges that meet there. */
const fromCorner = (
  { blank: { width, height } }: AsMade,
  flap: FlapName,
  { x, y }: OnBlank,
): readonly [number, number] =>
  ({
    bottom: [x, y] as const,
    right: [width - x, y] as const,
    seal: [width - x, height - y] as const,
    left: [x, height - y] as const,
  })[flap];

/** The point with these distances from a flap's corner. */
const atCorner = ({ blank: { width, height } }: AsMade, flap: FlapName, a: number, b: number): OnBlank =>
  ({
    bottom: { x: a, y: b },
    right: { x: width - a, y: b },
    seal: { x: width - a, y: height - b },
    left: { x: a, y: height - b },
  })[flap];

/** How far, measured as a mark along the edge, a point lies from a flap's corner: less than its mark is beyond it. */
const markOf = (made: AsMade, flap: FlapName, at: OnBlank): number => {
  const [a, b] = fromCorner(made, flap, at);
  return a + b;
};

const firstMark = (made: AsMade, flap: FlapName): number => made.first[flap].alongEdge;
const outerMark = (made: AsMade, flap: FlapName): number => (made.second ?? made.first)[flap].alongEdge;

/** Folds a point over a flap's wall: its distances from the corner swap about the two marks. */
function over(made: AsMade, flap: FlapName, at: OnBlank): OnBlank {
  const [a, b] = fromCorner(made, flap, at);
  const middle = (firstMark(made, flap) + outerMark(made, flap)) / 2;
  return atCorner(made, flap, middle - b, middle - a);
}

/** Whether there is paper at a point of the flat blank that lies beyond a flap's outermost score. */
function isPaper(made: AsMade, caliper: number, flap: FlapName, at: OnBlank): boolean {
  const [a, b] = fromCorner(made, flap, at);
  if (a < 0 || b < 0 || at.x < 0 || at.y < 0 || at.x > made.blank.width || at.y > made.blank.height)
    return false;
  const tip = made.tips[flap];
  if (a + b < tip.cutMark) return false;
  if (tip.shape === 'rounded' && a < tip.radius && b < tip.radius) {
    if (Math.hypot(tip.radius - a, tip.radius - b) > tip.radius) return false;
  }
  const back = Math.max(0.5, 2 * caliper) * Math.SQRT2;
  const isEnd = ENDS.includes(flap);
  return (isEnd ? (['left', 'right'] as const) : (['seal', 'bottom'] as const)).every((neighbour) => {
    const end = isEnd ? flap : neighbour;
    const notched = (end === 'seal' ? made.corners.seal : made.corners.bottom) === 'notched';
    // Both measured as marks: how far past the neighbour's first score, and how far out beyond this flap's outermost score.
    const past = firstMark(made, neighbour) - markOf(made, neighbour, at);
    const out = outerMark(made, flap) - markOf(made, flap, at);
    if (!isEnd) return past <= (notched ? -back : 0);
    return past <= 0 && (!notched || past <= -(out - back) / 8);
  });
}

/** How many layers lie over a point of the back, given where that point of the back is on the blank's plane. */
export const layersAt = (made: AsMade, caliper: number, on: OnBlank): number =>
  flapsAt(made, caliper, on).length + earsAt(made, on);

/** The flaps that lie over a point of the back, in the order in which they are folded: the topmost last. */
export const flapsAt = (made: AsMade, caliper: number, on: OnBlank): readonly FlapName[] =>
  FLAPS.filter((flap) => {
    const from = over(made, flap, on);
    return markOf(made, flap, from) <= outerMark(made, flap) && isPaper(made, caliper, flap, from);
  });

/** How many folded corner pieces lie over a point of the back. */
export function earsAt(made: AsMade, on: OnBlank): number {
  let count = 0;
  for (const end of ENDS) {
    if ((end === 'seal' ? made.corners.seal : made.corners.bottom) === 'notched') continue;
    for (const side of ['left', 'right'] as const) {
      const from = over(made, side, over(made, end, on));
      const beyondBoth =
        markOf(made, side, from) <= firstMark(made, side) && markOf(made, end, from) <= firstMark(made, end);
      const [a, b] = fromCorner(made, side, from);
      const inside =
        a >= 0 &&
        b >= 0 &&
        from.x <= made.blank.width &&
        from.y <= made.blank.height &&
        from.x >= 0 &&
        from.y >= 0;
      if (beyondBoth && inside) count++;
    }
  }
  return count;
}

/** Samples the back on an even grid of about `count` points: the share left bare and the greatest number of layers. */
export function sampleBack(
  made: AsMade,
  caliper: number,
  count: number,
): { readonly bare: number; readonly most: number; readonly points: number } {
  // The face in distances along the edges: between its marks. Its own frame is turned by 45°, so step in that frame.
  const { width, height } = made.face;
  const columns = Math.max(1, Math.round(Math.sqrt((count * width) / height)));
  const rows = Math.max(1, Math.round(count / columns));
  let [bare, most] = [0, 0];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const u = ((column + 0.5) / columns) * width; // from the left score
      const v = ((row + 0.5) / rows) * height; // from the bottom score
      // x − y and x + y along the edges, from the two scores.
      const difference = firstMark(made, 'left') - made.blank.height + u * Math.SQRT2;
      const sum = firstMark(made, 'bottom') + v * Math.SQRT2;
      const found = layersAt(made, caliper, { x: (sum + difference) / 2, y: (sum - difference) / 2 });
      if (found === 0) bare++;
      most = Math.max(most, found);
    }
  }
  return { bare: bare / (rows * columns), most, points: rows * columns };
}
