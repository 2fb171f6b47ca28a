import { distance, type Point, turn } from './point.js';
import { area, type Polygon } from './polygon.js';

/** One stretch of a path, from where the last one ended. An arc turns counter-clockwise unless `clockwise`. */
export type Stretch =
  | { readonly kind: 'line'; readonly to: Point }
  | { readonly kind: 'arc'; readonly to: Point; readonly centre: Point; readonly clockwise: boolean };

/** A closed outline of lines and true arcs, counter-clockwise as a whole. It ends where it starts. */
export interface Path {
  readonly start: Point;
  readonly stretches: readonly Stretch[];
}

/** A polygon's corner, and the radius it is rounded to (0: sharp). */
export interface RoundedCorner extends Point {
  readonly radius: number;
}

/** The outline of a polygon with rounded corners. A radius too large for its edges is taken as the largest that fits. */
export function roundedPath(corners: readonly RoundedCorner[]): Path {
  const stretches: Stretch[] = [];
  let start: Point = { x: 0, y: 0 };
  corners.forEach((at, index) => {
    const before = corners[(index + corners.length - 1) % corners.length] as RoundedCorner;
    const after = corners[(index + 1) % corners.length] as RoundedCorner;
    const arc = at.radius > 0 ? rounding(before, at, after) : null;
    const first = arc ? arc.from : { x: at.x, y: at.y };
    if (index === 0) start = first;
    else stretches.push({ kind: 'line', to: first });
    if (arc) stretches.push({ kind: 'arc', to: arc.to, centre: arc.centre, clockwise: arc.clockwise });
  });
  stretches.push({ kind: 'line', to: start });
  return { start, stretches };
}

/** The arc tangent to both edges at a corner, or null where the corner is straight. */
function rounding(before: RoundedCorner, at: RoundedCorner, after: RoundedCorner) {
  const [inLength, outLength] = [distance(before, at), distance(at, after)];
  const sine = turn(before, at, after) / (inLength * outLength);
  const cosine =
    ((at.x - before.x) * (after.x - at.x) + (at.y - before.y) * (after.y - at.y)) / (inLength * outLength);
  const tangentOfHalfTurn = Math.abs(sine) / (1 + cosine);
  if (!(tangentOfHalfTurn > 1e-9)) return null;
  const room = (edge: number, neighbour: RoundedCorner): number => (neighbour.radius > 0 ? edge / 2 : edge);
  const length = Math.min(at.radius * tangentOfHalfTurn, room(inLength, before), room(outLength, after));
  const fitting = length / tangentOfHalfTurn;
  const from = {
    x: at.x + ((before.x - at.x) * length) / inLength,
    y: at.y + ((before.y - at.y) * length) / inLength,
  };
  const to = {
    x: at.x + ((after.x - at.x) * length) / outLength,
    y: at.y + ((after.y - at.y) * length) / outLength,
  };
  const clockwise = sine < 0;
  const side = clockwise ? -1 : 1;
  const centre = {
    x: from.x - (side * (at.y - before.y) * fitting) / inLength,
    y: from.y + (side * (at.x - before.x) * fitting) / inLength,
  };
  return { from, to, centre, clockwise };
}

/** How far a chord may lie from its arc unless said otherwise, in the path's unit. */
const FLATNESS = 0.01;

/** The signed angle that an arc turns through (positive: counter-clockwise), in radians. */
export function sweep(from: Point, { to, centre, clockwise }: Extract<Stretch, { kind: 'arc' }>): number {
  const turned =
    Math.atan2(to.y - centre.y, to.x - centre.x) - Math.atan2(from.y - centre.y, from.x - centre.x);
  const positive = ((turned % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  return clockwise ? positive - 2 * Math.PI : positive;
}

/** The outline as a polygon whose edges lie within `flatness` of its arcs; each arc's middle is one of its corners. */
export function flatten({ start, stretches }: Path, flatness = FLATNESS): Polygon {
  const points: Point[] = [start];
  let from = start;
  for (const stretch of stretches) {
    if (stretch.kind === 'arc') {
      const { centre } = stretch;
      const radius = distance(from, centre);
      const angle = sweep(from, stretch);
      const most = 2 * Math.acos(Math.max(0, 1 - flatness / radius));
      const steps = 2 * Math.max(1, Math.ceil(Math.abs(angle) / most / 2));
      const startAngle = Math.atan2(from.y - centre.y, from.x - centre.x);
      for (let step = 1; step < steps; step++) {
        const at = startAngle + (angle * step) / steps;
        points.push({ x: centre.x + radius * Math.cos(at), y: centre.y + radius * Math.sin(at) });
      }
    }
    points.push(stretch.to);
    from = stretch.to;
  }
  points.pop();
  return points;
}

/** The exact area inside: of the polygon of its ends, and the segments between its arcs and their chords. */
export function pathArea({ start, stretches }: Path): number {
  let segments = 0;
  let from = start;
  for (const stretch of stretches) {
    if (stretch.kind === 'arc') {
      const angle = sweep(from, stretch);
      segments += (distance(from, stretch.centre) ** 2 * (angle - Math.sin(angle))) / 2;
    }
    from = stretch.to;
  }
  return area([start, ...stretches.slice(0, -1).map((stretch) => stretch.to)]) + segments;
}
