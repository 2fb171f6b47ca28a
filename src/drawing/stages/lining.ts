import type { Liner } from '../../folding/folding.js';
import { apartFrom } from '../../plane/apart-from.js';
import { flatten } from '../../plane/path.js';
import type { Segment } from '../../plane/point.js';
import { area, edgesOf } from '../../plane/polygon.js';
import { intersect } from '../../plane/region.js';
import type { Leaf, Scene, Stroke } from './scene.js';
import type { SheetPart } from './sheet-part.js';

/** A piece of the blank with what of the lining lies on its inside: over it, or beneath it once it is turned over. */
export function lined(part: SheetPart, liner: Liner | null): Scene {
  const parts = liner && carriesLining(part) ? intersect([flatten(liner.outline)], [part.piece.flat]) : [];
  const linings = parts.map((polygon) => ({
    edges: edgesOf(polygon),
    leaf: { corners: polygon.map(part.at), side: 'inside', otherSide: 'inside' } satisfies Leaf,
  }));
  const leaves = linings.map(({ leaf }) => leaf);
  if (isTurnedOver(part)) return { leaves: [...leaves, part.leaf], strokes: [] };
  return {
    leaves: [part.leaf, ...leaves],
    strokes: linings.flatMap(({ edges, leaf }) =>
      edges.flatMap((edge): readonly Stroke[] => {
        const stroke = (layer: Stroke['layer'], { from, to }: Segment): Stroke => ({
          layer,
          from: part.at(from),
          to: part.at(to),
          on: [leaf],
        });
        const cut = apartFrom(edge, liner?.folds ?? []);
        if (cut.length > 0) return cut.map((each) => stroke('lining', each));
        return part.piece.kind === 'face' || part.moved ? [] : [stroke('lining-fold', edge)];
      }),
    ),
  };
}

/** A lining covers the face and the seal flap, and a box's wall between. */
const carriesLining = ({ piece }: SheetPart): boolean =>
  piece.kind === 'face' || (piece.flap === 'seal' && piece.kind !== 'ear');

const isTurnedOver = ({ leaf }: SheetPart): boolean => area(leaf.corners) < -SLIGHT;

/** What stands upright shows less, in mm². */
const SLIGHT = 1e-3;
