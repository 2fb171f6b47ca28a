import { between, distance, type Point, type Segment } from './point.js';
import { type Polygon, tidy } from './polygon.js';

/** All points with `a·x + b·y <= c`. */
export interface HalfPlane {
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

/** How far a point lies outside (negative: inside), in units of (a, b). */
const outside = ({ a, b, c }: HalfPlane, { x, y }: Point): number => a * x + b * y - c;

/** Points within this of a half-plane's edge count as on it. */
const ON_EDGE = 1e-9;

/**
 * The part of a polygon in all half-planes (Sutherland and Hodgman). A polygon that is not convex must come out in
 * one piece, or its parts are joined along the edge.
 */
export function clip(polygon: Polygon, halfPlanes: readonly HalfPlane[]): Polygon {
  let result: readonly Point[] = polygon;
  for (const halfPlane of halfPlanes) {
    if (leaves(result, halfPlane)) result = inside(result, halfPlane);
    if (result.length < 3) return [];
  }
  return tidy(result);
}

function leaves(polygon: Polygon, halfPlane: HalfPlane): boolean {
  for (const corner of polygon) if (outside(halfPlane, corner) > ON_EDGE) return true;
  return false;
}

function inside(polygon: Polygon, halfPlane: HalfPlane): readonly Point[] {
  const kept: Point[] = [];
  let here = polygon[0] as Point;
  let now = outside(halfPlane, here);
  for (let index = 1; index <= polygon.length; index++) {
    const next = polygon[index % polygon.length] as Point;
    const then = outside(halfPlane, next);
    if (now <= ON_EDGE) kept.push(here);
    if ((now < -ON_EDGE && then > ON_EDGE) || (now > ON_EDGE && then < -ON_EDGE)) {
      kept.push(between(here, next, now / (now - then)));
    }
    here = next;
    now = then;
  }
  return kept;
}

/** The part of a segment in all half-planes, or null; of a strip's middle line, that where all of its width is in them. */
export function clipSegment(
  { from, to }: Segment,
  halfPlanes: readonly HalfPlane[],
  halfWidth = 0,
): Segment | null {
  let start = 0;
  let end = 1;
  const [x, y] = [to.x - from.x, to.y - from.y];
  const reach = halfWidth / (distance(from, to) || 1);
  for (const halfPlane of halfPlanes) {
    const across = reach * Math.abs(halfPlane.a * y - halfPlane.b * x);
    const atFrom = outside(halfPlane, from) + across;
    const atTo = outside(halfPlane, to) + across;
    if (atFrom > ON_EDGE && atTo > ON_EDGE) return null;
    if (atFrom > ON_EDGE) start = Math.max(start, atFrom / (atFrom - atTo));
    else if (atTo > ON_EDGE) end = Math.min(end, atFrom / (atFrom - atTo));
  }
  return start < end ? { from: between(from, to, start), to: between(from, to, end) } : null;
}

/** A half-plane with its edge moved towards its inside. */
export const movedIn = ({ a, b, c }: HalfPlane, by: number): HalfPlane => ({
  a,
  b,
  c: c - by * Math.hypot(a, b),
});

/** The half-planes whose common part is a convex, counter-clockwise polygon. */
export const halfPlanesOf = (convex: Polygon): readonly HalfPlane[] =>
  convex.map((here, index) => {
    const next = convex[(index + 1) % convex.length] as Point;
    const [a, b] = [next.y - here.y, here.x - next.x];
    const length = distance(here, next) || 1;
    return { a: a / length, b: b / length, c: (a * here.x + b * here.y) / length };
  });
