import type { HalfPlane } from './clip.js';
import { type Path, pathArea, type Stretch, sweep } from './path.js';
import { between, distance, type Point } from './point.js';

/** A stretch with the point that it starts from. */
type Placed = Stretch & { readonly from: Point };

/** Points within this of a half-plane's edge count as on it; stretches no longer than this are none, and areas no larger. */
const NOISE = 1e-9;

/**
 * The part of a convex outline in all half-planes, arcs kept as arcs, or null where nothing is left. Where the outline
 * leaves a half-plane, a straight stretch leads back in.
 */
export function clipPath(path: Path, halfPlanes: readonly HalfPlane[]): Path | null {
  let stretches = placed(path);
  for (const halfPlane of halfPlanes) {
    const kept = stretches
      .flatMap((stretch) => cutAt(stretch, crossings(stretch, halfPlane)))
      .filter((stretch) => outside(halfPlane, middle(stretch)) <= NOISE);
    stretches = kept.flatMap((stretch, index) => {
      const { to } = kept[(index + kept.length - 1) % kept.length] as Placed;
      const gap = distance(to, stretch.from) > NOISE;
      return gap ? [{ kind: 'line' as const, from: to, to: stretch.from }, stretch] : [stretch];
    });
  }
  const [first] = stretches;
  if (!first) return null;
  const left = { start: first.from, stretches: stretches.map(unplaced) };
  return pathArea(left) > NOISE ? left : null;
}

function placed({ start, stretches }: Path): readonly Placed[] {
  let from = start;
  return stretches.map((stretch) => {
    const here = { ...stretch, from };
    from = stretch.to;
    return here;
  });
}

const unplaced = (stretch: Placed): Stretch =>
  stretch.kind === 'line'
    ? { kind: 'line', to: stretch.to }
    : { kind: 'arc', to: stretch.to, centre: stretch.centre, clockwise: stretch.clockwise };

/** How far a point lies outside (negative: inside), in the path's unit. */
const outside = ({ a, b, c }: HalfPlane, { x, y }: Point): number => (a * x + b * y - c) / Math.hypot(a, b);

/** Where a stretch crosses the edge of a half-plane, as fractions of the way along it, in order. */
function crossings(stretch: Placed, halfPlane: HalfPlane): readonly number[] {
  if (stretch.kind === 'line') {
    const [from, to] = [outside(halfPlane, stretch.from), outside(halfPlane, stretch.to)];
    return from < 0 === to < 0 ? [] : [from / (from - to)];
  }
  const { centre, from } = stretch;
  const reach = -outside(halfPlane, centre) / distance(centre, from);
  if (Math.abs(reach) >= 1) return [];
  const turned = sweep(from, stretch);
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const normal = Math.atan2(halfPlane.b, halfPlane.a);
  return [normal - Math.acos(reach), normal + Math.acos(reach)]
    .map((angle) => turnsFrom(start, angle, turned) / turned)
    .filter((fraction) => fraction < 1)
    .sort((a, b) => a - b);
}

/** How far round it is from one angle to another, in the sense of `turned`, in radians: less than a full turn. */
function turnsFrom(start: number, end: number, turned: number): number {
  const sense = Math.sign(turned);
  const full = 2 * Math.PI;
  return sense * (((((end - start) * sense) % full) + full) % full);
}

/** A stretch in pieces. */
function cutAt(stretch: Placed, fractions: readonly number[]): readonly Placed[] {
  const points = [stretch.from, ...fractions.map((fraction) => along(stretch, fraction)), stretch.to];
  return points
    .slice(1)
    .map((to, index): Placed => ({ ...stretch, from: points[index] as Point, to }))
    .filter(({ from, to }) => distance(from, to) > NOISE);
}

const middle = (stretch: Placed): Point => along(stretch, 0.5);

/** The point a fraction of the way along a stretch. */
function along(stretch: Placed, fraction: number): Point {
  if (stretch.kind === 'line') return between(stretch.from, stretch.to, fraction);
  const { centre, from } = stretch;
  const radius = distance(centre, from);
  const angle = Math.atan2(from.y - centre.y, from.x - centre.x) + sweep(from, stretch) * fraction;
  return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
}
