import { between, distance, type Point, type Segment } from './point.js';

/** How far a point lies from the nearest point of a segment. */
export function distanceFrom({ from, to }: Segment, at: Point): number {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const along = ((at.x - from.x) * x + (at.y - from.y) * y) / (x * x + y * y || 1);
  return distance(at, between(from, to, Math.min(1, Math.max(0, along))));
}
