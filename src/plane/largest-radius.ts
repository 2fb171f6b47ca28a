import type { RoundedCorner } from './path.js';
import { distance, turn } from './point.js';

/**
 * The largest radius to which the rounded corners of a polygon can be rounded, in its unit: an arc takes
 * `r·tan(half the turn)` of either edge, and two rounded neighbours share the edge between them. Infinite where no
 * corner is rounded.
 */
export function largestRadius(corners: readonly RoundedCorner[]): number {
  const radii = corners.map((at, index) => {
    if (at.radius === 0) return Infinity;
    const before = corners[(index + corners.length - 1) % corners.length] ?? at;
    const after = corners[(index + 1) % corners.length] ?? at;
    const room = (neighbour: RoundedCorner): number =>
      neighbour.radius > 0 ? distance(at, neighbour) / 2 : distance(at, neighbour);
    const angle = Math.atan2(Math.abs(turn(before, at, after)), along(before, at, after));
    return Math.min(room(before), room(after)) / Math.tan(angle / 2);
  });
  return Math.min(Infinity, ...radii);
}

/** The scalar product of the two edges at a corner. */
const along = (before: RoundedCorner, at: RoundedCorner, after: RoundedCorner): number =>
  (at.x - before.x) * (after.x - at.x) + (at.y - before.y) * (after.y - at.y);
