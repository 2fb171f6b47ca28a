import type { AsMade, Piece } from '../../folding/folding.js';
import { placed, type Pose } from '../../folding/pose.js';
import type { Point } from '../../plane/point.js';
import type { Point3 } from '../../plane/point3.js';
import type { Leaf } from './scene.js';

/** A piece of the blank in its place at a moment of the folding. */
export interface SheetPart {
  readonly piece: Piece;
  readonly leaf: Leaf;
  /** Where a point of it lies. */
  readonly at: (point: Point) => Point3;
  /** Whether it has left its place on the bench. */
  readonly moved: boolean;
}

/** Points moved by less have not moved, in mm. */
const STILL = 1e-9;

export function sheetPart(made: AsMade, piece: Piece, pose: Pose): SheetPart {
  const at = (point: Point): Point3 => placed(made, piece, pose, point);
  const corners = piece.flat.map(at);
  const moved = corners.some((corner, index) => {
    const { x, y } = piece.flat[index] as Point;
    return Math.max(Math.abs(corner.x - x), Math.abs(corner.y - y), Math.abs(corner.z)) > STILL;
  });
  return { piece, leaf: { corners, side: 'inside', otherSide: 'show-side' }, at, moved };
}
