import { clip } from '../plane/clip.js';
import { flatten, type Path } from '../plane/path.js';
import type { Point } from '../plane/point.js';
import type { Polygon } from '../plane/polygon.js';
import { firstScoreAt, isSide, NEIGHBOURS, OUTWARD, outerScoreAt, outwardOf } from './corner-directions.js';
import { FLAP_NAMES, type AsMade, type FlapName, type Piece } from './folding.js';
import { beyond, within } from './outline.js';

/** The order in which flaps go down: sides, bottom, seal (their ears go in just before the end flap above them). */
const FOLD_ORDER: readonly FlapName[] = ['left', 'right', 'bottom', 'seal'];

/**
 * Cuts the outline along its scores and says where each piece lands: face, walls, then in folding order. Arcs are flattened
 * to within 0.01 mm, or `flatness`.
 */
export function pieces(made: AsMade, outline: Path, flatness?: number): readonly Piece[] {
  const paper = flatten(outline, flatness);
  const face = clip(
    paper,
    FLAP_NAMES.map((flap) => within(flap, firstScoreAt(made, flap))),
  );
  const walls = made.second
    ? FLAP_NAMES.map((flap): Piece => ({ kind: 'wall', flap, flat: wall(made, paper, flap), folded: null }))
    : [];
  const folded = FOLD_ORDER.flatMap((flap) =>
    (isSide(flap) ? [] : ears(made, paper, flap)).concat(flapPiece(made, paper, flap)),
  );
  return [{ kind: 'face' as const, flap: null, flat: face, folded: null }, ...walls, ...folded].filter(
    ({ flat }) => flat.length > 2,
  );
}

const wall = (made: AsMade, paper: Polygon, flap: FlapName): Polygon =>
  clip(paper, [
    beyond(flap, firstScoreAt(made, flap)),
    within(flap, outerScoreAt(made, flap)),
    ...NEIGHBOURS[flap].map((neighbour) => within(neighbour, firstScoreAt(made, neighbour))),
  ]);

function flapPiece(made: AsMade, paper: Polygon, flap: FlapName): Piece {
  const flat = clip(paper, [
    beyond(flap, outerScoreAt(made, flap)),
    ...NEIGHBOURS[flap].map((neighbour) => within(neighbour, firstScoreAt(made, neighbour))),
  ]);
  return { kind: 'flap', flap, flat, folded: flat.map((at) => foldOver(made, flap, at)) };
}

/** The folded ears of an end flap: over with the side flap, then over again with the end flap. */
const ears = (made: AsMade, paper: Polygon, end: FlapName): readonly Piece[] =>
  NEIGHBOURS[end].map((side): Piece => {
    const flat = clip(paper, [beyond(side, firstScoreAt(made, side)), beyond(end, firstScoreAt(made, end))]);
    const folded = flat.map((at) => foldOver(made, end, foldOver(made, side, at)));
    return { kind: 'ear', flap: side, flat, folded };
  });

/**
 * Where a point of a flap lands on the back: at a distance `x` beyond its outermost score, it lands at `x` inside the
 * face's edge (one reflection; for a box two right angles with the wall between).
 */
export function foldOver(made: AsMade, flap: FlapName, at: Point): Point {
  const { x, y } = OUTWARD[flap];
  const shift = firstScoreAt(made, flap) + outerScoreAt(made, flap) - 2 * outwardOf(flap, at);
  return { x: at.x + x * shift, y: at.y + y * shift };
}
