import type { Point3 } from './point3.js';

/** Points this near a plane lie in it, in the unit of the points. */
const IN_PLANE = 1e-6;

/**
 * The order in which flat polygons in space are painted, as indices: the furthest first, `towards` being the direction to
 * the reader. Those in one plane lie on each other as given, the lowest (least z) first. Right wherever of any two that
 * the reader sees over each other one lies on one side of the other's plane, as on a convex body and inside it.
 */
export function farToNear(polygons: readonly (readonly Point3[])[], towards: Point3): readonly number[] {
  const planes = polygons.map((polygon) => planeOf(polygon, towards));
  const left = polygons.map((_, index) => index);
  const order: number[] = [];
  while (left.length > 0) {
    const next = left.find((one) => !left.some((other) => isBehind(other, one))) ?? (left[0] as number);
    order.push(next);
    left.splice(left.indexOf(next), 1);
  }
  return order;

  /** Whether one must be painted before another. Where each is nearer than the other's plane, they cannot overlap. */
  function isBehind(one: number, other: number): boolean {
    if (one === other) return false;
    const otherLies = sideOf(planes[one] as Plane, polygons[other] as readonly Point3[]);
    if (otherLies === 'within') return towards.z < 0 ? other < one : one < other;
    const oneLies = sideOf(planes[other] as Plane, polygons[one] as readonly Point3[]);
    return (
      (otherLies === 'nearer' && oneLies !== 'nearer') || (oneLies === 'further' && otherLies !== 'further')
    );
  }
}

/** The points at a distance `at` along a normal that points to the reader; null where the reader sees it edge on. */
type Plane = { readonly normal: Point3; readonly at: number } | null;

/** On which side of a plane a polygon lies: towards the reader, away from him, in it, or on both. */
function sideOf(plane: Plane, polygon: readonly Point3[]): 'nearer' | 'further' | 'within' | 'both' {
  if (!plane) return 'both';
  const off = polygon.map((at) => dot(plane.normal, at) - plane.at);
  const [nearer, further] = [off.some((by) => by > IN_PLANE), off.some((by) => by < -IN_PLANE)];
  return nearer ? (further ? 'both' : 'nearer') : further ? 'further' : 'within';
}

function planeOf(polygon: readonly Point3[], towards: Point3): Plane {
  let sum: Point3 = { x: 0, y: 0, z: 0 };
  polygon.forEach((a, index) => {
    const b = polygon[(index + 1) % polygon.length] ?? a;
    sum = {
      x: sum.x + a.y * b.z - a.z * b.y,
      y: sum.y + a.z * b.x - a.x * b.z,
      z: sum.z + a.x * b.y - a.y * b.x,
    };
  });
  const length = Math.sqrt(dot(sum, sum)) || 1;
  const facing = dot(sum, towards) / length;
  if (Math.abs(facing) < IN_PLANE) return null;
  const by = Math.sign(facing) / length;
  const normal = { x: sum.x * by, y: sum.y * by, z: sum.z * by };
  return { normal, at: dot(normal, polygon[0] as Point3) };
}

const dot = (a: Point3, b: Point3): number => a.x * b.x + a.y * b.y + a.z * b.z;
