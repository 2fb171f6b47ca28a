import type { GlueLine } from '../folding/folding.js';
import { distance } from '../plane/point.js';
import type { Polygon } from '../plane/polygon.js';

/** The rectangle that a strip of tape or glue covers, about its middle line. */
export function stripOutline({ from, to, width }: GlueLine): Polygon {
  const half = width / 2 / (distance(from, to) || 1);
  const across = { x: (from.y - to.y) * half, y: (to.x - from.x) * half };
  return [
    { x: from.x - across.x, y: from.y - across.y },
    { x: to.x - across.x, y: to.y - across.y },
    { x: to.x + across.x, y: to.y + across.y },
    { x: from.x + across.x, y: from.y + across.y },
  ];
}
