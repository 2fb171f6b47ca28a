import type { GlueLine } from '../../folding/folding.js';
import { edgesOf } from '../../plane/polygon.js';
import { stripOutline } from '../strip-outline.js';
import type { Leaf, Scene, Stroke } from './scene.js';
import type { SheetPart } from './sheet-part.js';

/**
 * Strips of tape or glue on their flaps. On an open flap a strip lies on the inside, white with its backing; of one that
 * is folded over, its outline is drawn on the flap as if seen through it.
 */
export function tape(sheet: readonly SheetPart[], strips: readonly GlueLine[]): Scene {
  const laid = strips.flatMap((strip) =>
    sheet
      .filter(({ piece }) => piece.kind === 'flap' && piece.flap === strip.on)
      .map(({ leaf, moved, at }) => {
        const corners = stripOutline(strip);
        const backing: Leaf = { corners: corners.map(at), side: 'show-side', otherSide: 'show-side' };
        return { edges: edgesOf(corners), at, leaf: moved ? leaf : backing, backing: moved ? [] : [backing] };
      }),
  );
  return {
    leaves: laid.flatMap(({ backing }) => backing),
    strokes: laid.flatMap(({ edges, at, leaf }) =>
      edges.map(({ from, to }): Stroke => ({ layer: 'glue', from: at(from), to: at(to), on: [leaf] })),
    ),
  };
}
