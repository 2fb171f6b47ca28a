import type { FlapName, Folding, Piece } from '../../folding/folding.js';
import { closedPose } from '../../folding/pose.js';
import type { Envelope } from '../../recipe/recipe.js';
import type { Drawing } from '../drawing.js';
import { paperScene } from './paper-scene.js';
import { type Beneath, drawScene, type Scene } from './scene.js';
import { sealDisc } from './seal-disc.js';
import { SEAL_STRIPS } from './strips.js';
import { tucksBehind } from './tucks-behind.js';
import { FROM_ABOVE } from './view.js';

/** The back of the closed envelope. */
export const back = (folding: Folding, envelope: Envelope, beneath: Beneath): Drawing =>
  drawScene(closedScene(folding, envelope), FROM_ABOVE, beneath);

/** The envelope closed as its recipe has it: taped, a seal over the tip, or its flap tucked in. */
export function closedScene(folding: Folding, { fasten }: Envelope): Scene {
  const { made } = folding;
  return paperScene(folding, closedPose(made), {
    glue: SEAL_STRIPS,
    ...(fasten.value === 'tuck' && { pieces: sealBeneath(folding) }),
    ...(fasten.value === 'seal' && { over: sealDisc(made) }),
  });
}

/** A tucked flap lies behind the bottom flap, or behind all the others. */
function sealBeneath(folding: Folding): readonly Piece[] {
  const { pieces } = folding;
  const are = (name: FlapName) => (piece: Piece) => piece.kind === 'flap' && piece.flap === name;
  const areNot = (name: FlapName) => (piece: Piece) => !are(name)(piece);
  return tucksBehind(folding) === 'bottom flap'
    ? [...pieces.filter(areNot('bottom')), ...pieces.filter(are('bottom'))]
    : [...pieces.filter(are('seal')), ...pieces.filter(areNot('seal'))];
}
