import { distance, type Point, type Segment, turn } from './point.js';

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
  const kept = [...polygon];
  let before = kept.at(-1) as Corner;
  for (let index = 0; index < kept.length && kept.length > 2; ) {
    const here = kept[index] as Corner;
    if (isNeedless(before, here, kept[index + 1] ?? (kept[0] as Corner))) {
      kept.splice(index, 1);
      index = Math.max(0, index - 2);
      before = kept.at(index - 1) as Corner;
    } else {
      index++;
      before = here;
    }
  }
  return kept.length > 2 ? kept : [];
}

function isNeedless(before: Point, here: Point, after: Point): boolean {
  const into = distance(before, here);
  return (
    into < SAME_POINT ||
    Math.abs(turn(before, here, after)) < SAME_POINT * Math.max(into, distance(here, after))
  );
}
