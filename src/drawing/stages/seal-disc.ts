import { blankCorners } from '../../folding/blank.js';
import { firstScoreAt } from '../../folding/corner-directions.js';
import type { AsMade } from '../../folding/folding.js';
import type { Leaf, Scene } from './scene.js';

/** Radius of a sticker or a wax seal, in mm (common practice, no source); on a small envelope less. */
const RADIUS = 11;
const CORNERS = 48;

/** A seal over the tip of the closed seal flap, half on the flap and half on the paper beneath. */
export function sealDisc(made: AsMade): Scene {
  const { x } = blankCorners(made.blank).seal;
  const y = firstScoreAt(made, 'seal') - made.heights.seal;
  const radius = Math.min(RADIUS, made.heights.seal / 4);
  const corners = Array.from({ length: CORNERS }, (_, index) => {
    const angle = (2 * Math.PI * index) / CORNERS;
    return { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle), z: made.depth };
  });
  const leaf: Leaf = { corners, side: 'inside', otherSide: 'inside' };
  const strokes = corners.map((from, index) => ({
    layer: 'edge' as const,
    from,
    to: corners[(index + 1) % CORNERS] ?? from,
    on: [leaf],
  }));
  return { leaves: [leaf], strokes };
}
