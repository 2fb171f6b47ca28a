import type { Point } from './point.js';
import type { Polygon } from './polygon.js';

/** A stretch of a line, `from <= to`. */
export interface Interval {
  readonly from: number;
  readonly to: number;
}

/** Where an upright line at `x` meets a polygon (lowest to highest), or null where it passes by. */
export function sectionAt(polygon: Polygon, x: number): Interval | null {
  let from = Infinity;
  let to = -Infinity;
  polygon.forEach((here, index) => {
    const next = polygon[(index + 1) % polygon.length] as Point;
    if ((here.x < x && next.x < x) || (here.x > x && next.x > x)) return;
    const isUpright = here.x === next.x;
    const y = isUpright ? here.y : here.y + ((next.y - here.y) * (x - here.x)) / (next.x - here.x);
    from = Math.min(from, y, isUpright ? next.y : y);
    to = Math.max(to, y, isUpright ? next.y : y);
  });
  return from <= to ? { from, to } : null;
}

/** What two stretches have in common, or null. */
export function common(one: Interval | null, other: Interval | null): Interval | null {
  if (!one || !other) return null;
  const [from, to] = [Math.max(one.from, other.from), Math.min(one.to, other.to)];
  return from < to ? { from, to } : null;
}

export const lengthOf = (interval: Interval | null): number => (interval ? interval.to - interval.from : 0);

/** The length that stretches cover together. */
export const unionLength = (one: Interval | null, other: Interval | null): number =>
  lengthOf(one) + lengthOf(other) - lengthOf(common(one, other));
