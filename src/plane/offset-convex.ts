import { clip, halfPlanesOf, movedIn } from './clip.js';
import { bounds, type Polygon } from './polygon.js';

/** A convex polygon with every edge moved out by a distance (negative: in), its corners sharp; empty where nothing is left. */
export function offsetConvex(convex: Polygon, by: number): Polygon {
  if (convex.length < 3) return [];
  const { min, max } = bounds(convex);
  const reach = max.x - min.x + (max.y - min.y) + 4 * Math.abs(by);
  const around = [
    { x: min.x - reach, y: min.y - reach },
    { x: max.x + reach, y: min.y - reach },
    { x: max.x + reach, y: max.y + reach },
    { x: min.x - reach, y: max.y + reach },
  ];
  return clip(
    around,
    halfPlanesOf(convex).map((edge) => movedIn(edge, -by)),
  );
}
