import type { Folding, Piece } from '../../folding/folding.js';
import { closedPose } from '../../folding/pose.js';
import type { Envelope } from '../../recipe/recipe.js';
import type { Drawing } from '../drawing.js';
import { paperScene } from './paper-scene.js';
import { type Beneath, drawScene, type Scene } from './scene.js';
import { sealDisc } from './seal-disc.js';
import { SEAL_STRIPS } from './strips.js';
import { FROM_ABOVE } from './view.js';

/** The back of the closed envelope. */
export const back = (folding: Folding, envelope: Envelope, beneath: Beneath): Drawing =>
  drawScene(closedScene(folding, envelope), FROM_ABOVE, beneath);

/** The envelope closed as its recipe has it: taped, a seal over the tip, or the tip tucked behind the bottom flap. */
export function closedScene(folding: Folding, { fasten }: Envelope): Scene {
  const { made } = folding;
  return paperScene(folding, closedPose(made), {
    glue: SEAL_STRIPS,
    ...(fasten.value === 'tuck' && { pieces: bottomLast(folding) }),
    ...(fasten.value === 'seal' && { over: sealDisc(made) }),
  });
}

/** A tucked flap goes behind the bottom flap. */
function bottomLast({ pieces }: Folding): readonly Piece[] {
  const isBottom = ({ kind, flap }: Piece): boolean => kind === 'flap' && flap === 'bottom';
  return [...pieces.filter((piece) => !isBottom(piece)), ...pieces.filter(isBottom)];
}
