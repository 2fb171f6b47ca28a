import { distance, type Point, turn } from './point.js';
import { edgesOf, type Polygon } from './polygon.js';

/** What lies this near an outline lies on it, in the unit of the points. */
const ON_EDGE = 1e-6;

/** Whether a point lies inside a polygon of any shape, off its outline. */
export function contains(polygon: Polygon, at: Point): boolean {
  let inside = false;
  for (const { from, to } of edgesOf(polygon)) {
    if (isOn(from, to, at)) return false;
    const crosses = from.y > at.y !== to.y > at.y;
    if (crosses && turn(from, to, at) > 0 === to.y > from.y) inside = !inside;
  }
  return inside;
}

function isOn(from: Point, to: Point, at: Point): boolean {
  const length = distance(from, to);
  if (length === 0) return distance(from, at) < ON_EDGE;
  if (Math.abs(turn(from, to, at)) > ON_EDGE * length) return false;
  const along = ((at.x - from.x) * (to.x - from.x) + (at.y - from.y) * (to.y - from.y)) / length;
  return along > -ON_EDGE && along < length + ON_EDGE;
}
