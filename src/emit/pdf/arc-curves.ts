import { type Stretch, sweep } from '../../plane/path.js';
import { distance, type Point } from '../../plane/point.js';

/** A cubic curve from where the one before ended: its two handles, and its end. */
export interface Curve {
  readonly first: Point;
  readonly second: Point;
  readonly to: Point;
}

/** Pieces of an arc no longer than this come out within a few millionths of the radius. */
const LONGEST_PIECE = Math.PI / 4;

/** An arc as cubic curves (the usual 4/3·tan(angle/4) for the handles). */
export function arcCurves(from: Point, arc: Extract<Stretch, { kind: 'arc' }>): readonly Curve[] {
  const { centre } = arc;
  const angle = sweep(from, arc);
  const radius = distance(from, centre);
  const pieces = Math.max(1, Math.ceil(Math.abs(angle) / LONGEST_PIECE - 1e-9));
  const step = angle / pieces;
  const handle = (4 / 3) * Math.tan(step / 4) * radius;
  const startAngle = Math.atan2(from.y - centre.y, from.x - centre.x);
  const at = (turn: number): Point => ({
    x: centre.x + radius * Math.cos(turn),
    y: centre.y + radius * Math.sin(turn),
  });
  return Array.from({ length: pieces }, (_, piece) => {
    const [a, b] = [startAngle + piece * step, startAngle + (piece + 1) * step];
    const [start, end] = [at(a), at(b)];
    return {
      first: { x: start.x - handle * Math.sin(a), y: start.y + handle * Math.cos(a) },
      second: { x: end.x + handle * Math.sin(b), y: end.y - handle * Math.cos(b) },
      to: piece === pieces - 1 ? arc.to : end,
    };
  });
}
