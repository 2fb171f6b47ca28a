import type { AsMade } from '../../folding/folding.js';
import type { Size } from '../../recipe/recipe.js';
import { edgesOf } from '../../plane/polygon.js';
import type { Leaf, Scene } from './scene.js';

/** The card half way in the mouth: its middle lies on the seal flap's hinge, in a box half way up the walls. */
export function cardGoingIn({ faceCentre, face, depth }: AsMade, { width, height }: Size): Scene {
  const [left, foot] = [faceCentre.x - width / 2, faceCentre.y + face.height / 2 - height / 2];
  const corners = [
    { x: left, y: foot },
    { x: left + width, y: foot },
    { x: left + width, y: foot + height },
    { x: left, y: foot + height },
  ];
  const raised = ({ x, y }: { x: number; y: number }) => ({ x, y, z: depth / 2 });
  const leaf: Leaf = { corners: corners.map(raised), side: 'card', otherSide: 'card' };
  return {
    leaves: [leaf],
    strokes: edgesOf(corners).map(({ from, to }) => ({
      layer: 'edge',
      from: raised(from),
      to: raised(to),
      on: [leaf],
    })),
  };
}
