import type { Point } from './point.js';

/** A point in space: x and y as in the plane, z out of it towards the reader. */
export interface Point3 extends Point {
  readonly z: number;
}

/** A line in the plane z = 0 to turn about: the points at a distance `at` from the origin along a unit normal. */
export interface Axis {
  readonly normal: Point;
  readonly at: number;
}

/** Turns a point about an axis: what lies beyond it along the normal rises towards the reader. */
export function turnAbout({ normal, at }: Axis, degrees: number, { x, y, z }: Point3): Point3 {
  const angle = (degrees * Math.PI) / 180;
  const beyond = normal.x * x + normal.y * y - at;
  const moved = beyond * (Math.cos(angle) - 1) - z * Math.sin(angle);
  return {
    x: x + normal.x * moved,
    y: y + normal.y * moved,
    z: beyond * Math.sin(angle) + z * Math.cos(angle),
  };
}
