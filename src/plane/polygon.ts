import type { Point, Segment } from './point.js';

/** Corners in order, counter-clockwise, the first not repeated; fewer than three bound nothing. */
export type Polygon = readonly Point[];

/** Points closer than this are one point: floating-point noise, far below anything drawn. */
const SAME_POINT = 1e-9;

/** Signed area: positive for counter-clockwise. */
export function area(polygon: Polygon): number {
  let twice = 0;
  polygon.forEach((corner, index) => {
    const next = polygon[(index + 1) % polygon.length] ?? corner;
    twice += corner.x * next.y - next.x * corner.y;
  });
  return twice / 2;
}

/** From each corner to the next, and from the last to the first. */
export const edgesOf = (polygon: Polygon): readonly Segment[] =>
  polygon.map((from, index) => ({ from, to: polygon[(index + 1) % polygon.length] ?? from }));

/** Least and greatest coordinates; of no points at all, an empty box at the origin. */
export function bounds(points: readonly Point[]): { readonly min: Point; readonly max: Point } {
  if (points.length === 0) return { min: { x: 0, y: 0 }, max: { x: 0, y: 0 } };
  const min = { x: Infinity, y: Infinity };
  const max = { x: -Infinity, y: -Infinity };
  for (const { x, y } of points) {
    min.x = Math.min(min.x, x);
    min.y = Math.min(min.y, y);
    max.x = Math.max(max.x, x);
    max.y = Math.max(max.y, y);
  }
  return { min, max };
}

/** The same polygon turning counter-clockwise. */
export const counterClockwise = (polygon: Polygon): Polygon =>
  area(polygon) < 0 ? [...polygon].reverse() : polygon;

/** Drops repeated corners, corners on a straight line, and spikes that run out and back. */
export function tidy<Corner extends Point>(polygon: readonly Corner[]): readonly Corner[] {
  if (polygon.length < 3) return [];
  const first = needless(polygon, 0);
  if (first === polygon.length) return polygon;
  const kept = [...polygon];
  for (let at = first; at < kept.length && kept.length > 2; at = needless(kept, at - 2)) kept.splice(at, 1);
  return kept.length < 3 ? [] : kept;
}

/** Where the first corner from there on is that may be dropped; the polygon's length if there is none. */
function needless(polygon: Polygon, from: number): number {
  let index = Math.max(0, from);
  let before = polygon.at(index - 1) as Point;
  for (; index < polygon.length; index++) {
    const here = polygon[index] as Point;
    const after = polygon[index + 1] ?? (polygon[0] as Point);
    // Written out, and squared, since it is asked of every corner of all that is clipped.
    const inX = here.x - before.x;
    const inY = here.y - before.y;
    const outX = after.x - here.x;
    const outY = after.y - here.y;
    const longest = Math.max(inX * inX + inY * inY, outX * outX + outY * outY);
    if ((inX * outY - inY * outX) ** 2 <= SAME_POINT ** 2 * longest) break;
    before = here;
  }
  return index;
}
