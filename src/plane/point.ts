/*
 * plane/: geometry that has never heard of paper.
 * In and out: points, segments, polygons (counter-clockwise, the first point not repeated), paths with true arcs.
 * Refuses to know: envelopes, units, drawings.
 */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A straight stretch between two points. */
export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

/** (Paper is never so large or small that a square leaves the range, and `Math.hypot` takes many times as long.) */
export const distance = (a: Point, b: Point): number => Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);

/** The point a fraction of the way from `a` to `b`. */
export const between = (a: Point, b: Point, fraction: number): Point => ({
  x: a.x + (b.x - a.x) * fraction,
  y: a.y + (b.y - a.y) * fraction,
});

/** Twice the signed area of the triangle: positive where `a`, `b`, `c` turn counter-clockwise. */
export const turn = (a: Point, b: Point, c: Point): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
