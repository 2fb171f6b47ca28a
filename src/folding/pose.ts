import type { Point } from '../plane/point.js';
import { type Axis, type Point3, turnAbout } from '../plane/point3.js';
import { firstScoreAt, OUTWARD, outerScoreAt } from './corner-directions.js';
import type { AsMade, FlapName, FlapRecord, Folding, Piece } from './folding.js';

/** How far a flap is folded, in degrees: 0 flat on the bench. */
export interface Turned {
  /** About the first score: to 180 for a flat envelope; for a box to 90, and the wall stands. */
  readonly first: number;
  /** About the second score of a box, from the wall on: to 90. A flat envelope has none. */
  readonly second: number;
}

/** A moment of the folding: how far each flap is folded. */
export type Pose = FlapRecord<Turned>;

/** Every flap flat on the bench. */
export const OPEN: Pose = everyFlap({ first: 0, second: 0 });

/** Every flap folded as far as it goes. */
export const closedPose = ({ second }: AsMade): Pose =>
  everyFlap(second ? { first: 90, second: 90 } : { first: 180, second: 0 });

/**
 * The corners of every piece in space, in the order of `pieces` and of each one's `flat`: x and y as on the flat blank,
 * z from the bench (the face's plane) up towards the reader, who looks at the inside. Paper has no thickness here.
 */
export const posed = (
  { made, pieces }: Pick<Folding, 'made' | 'pieces'>,
  pose: Pose,
): readonly (readonly Point3[])[] =>
  pieces.map((piece) => piece.flat.map((at) => placed(made, piece, pose, at)));

/**
 * Where a point of a piece lies. An ear goes over with its side flap and then turns with the end flap; it stays joined
 * to both as long as the side flap lies flat (open, or all the way over) while the end flap turns, as paper asks too.
 */
export function placed(made: AsMade, piece: Piece, pose: Pose, at: Point): Point3 {
  return turnsOf(made, piece, pose).reduce<Point3>(
    (point, { axis, degrees }) => turnAbout(axis, degrees, point),
    { ...at, z: 0 },
  );
}

interface Turn {
  readonly axis: Axis;
  readonly degrees: number;
}

/** The turns that bring a piece from the flat blank to its place, in order: the outermost score first. */
function turnsOf(made: AsMade, { kind, flap, flat }: Piece, pose: Pose): readonly Turn[] {
  if (flap === null) return [];
  const about = (name: FlapName, at: number, degrees: number): Turn => ({
    axis: { normal: OUTWARD[name], at },
    degrees,
  });
  const first = (name: FlapName): Turn => about(name, firstScoreAt(made, name), pose[name].first);
  const whole = (name: FlapName): readonly Turn[] =>
    made.second ? [about(name, outerScoreAt(made, name), pose[name].second), first(name)] : [first(name)];
  if (kind === 'wall') return [first(flap)];
  return kind === 'ear' ? [...whole(flap), ...whole(endBeside(made, flat))] : whole(flap);
}

/** The end flap that an ear turns with: the one on whose side of the face it lies. */
const endBeside = ({ faceCentre }: AsMade, [corner]: readonly Point[]): FlapName =>
  corner && corner.y > faceCentre.y ? 'seal' : 'bottom';

function everyFlap(turned: Turned): Pose {
  return { left: turned, right: turned, seal: turned, bottom: turned };
}
