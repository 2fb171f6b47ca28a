import { alongEdges } from '../../folding/edge-frame.js';
import type { Piece } from '../../folding/folding.js';
import { area } from '../../plane/polygon.js';
import { intersect, regionArea } from '../../plane/region.js';

/** Faces `f` and `g`, and 1 where `f` lies on the side that `g`'s normal points to, -1 where on the other. */
export type FaceOrder = readonly [f: number, g: number, side: 1 | -1];

/** Pieces that overlap by less only touch, in mm². */
const TOUCH = 0.01;

/**
 * Which of the closed envelope's pieces lie over which, for each two that overlap. They come bottom first to top. The
 * inside is a face's front: a flap lies with its front down, an ear, folded twice, with its front up again.
 */
export function faceOrders(pieces: readonly Piece[], isFlat: boolean): readonly FaceOrder[] {
  // The face of a box has a layer of its own, a wall's height beneath the flaps.
  const lying = pieces.flatMap(({ kind, flat, folded }, index) => {
    const outline = folded ?? (isFlat && kind === 'face' ? flat : null);
    return outline ? [{ index, outline: outline.map(alongEdges) }] : [];
  });
  return lying.flatMap((above, position) =>
    lying
      .slice(0, position)
      .filter(({ outline }) => regionArea(intersect([outline], [above.outline])) > TOUCH)
      .map((below): FaceOrder => [above.index, below.index, area(below.outline) > 0 ? 1 : -1]),
  );
}
