import type { Folding } from '../../folding/folding.js';
import { closedPose, OPEN } from '../../folding/pose.js';
import type { Envelope } from '../../recipe/recipe.js';
import { cardGoingIn } from './card-leaf.js';
import { paperScene } from './paper-scene.js';
import { drawScene, type Scene } from './scene.js';
import type { Stage } from './stage.js';
import { CENTRE_STRIP, LOWER_STRIPS, SEAL_STRIPS } from './strips.js';
import { FROM_ABOVE } from './view.js';

/** A flat envelope between the cut blank and the closed flap, from above. */
export function flatMoments(folding: Folding, envelope: Envelope): readonly Stage[] {
  const { made, centreSeam } = folding;
  const closed = closedPose(made);
  const sidesIn = { ...closed, bottom: OPEN.bottom, seal: OPEN.seal };
  const bottomUp = { ...closed, seal: OPEN.seal };
  const within = cardGoingIn(made, envelope.card.value);
  return [
    shown(
      `Left flap in, then right${centreSeam ? ', glued to it' : ''}. Glue on the bottom flap.`,
      paperScene(folding, sidesIn, { glue: [...CENTRE_STRIP, ...LOWER_STRIPS] }),
    ),
    shown('Bottom flap up, glued.', paperScene(folding, bottomUp, { glue: LOWER_STRIPS })),
    shown('Card in.', paperScene(folding, bottomUp, { glue: SEAL_STRIPS, within })),
  ];
}

function shown(caption: string, scene: Scene): Stage {
  const drawing = drawScene(scene, FROM_ABOVE, 'left out');
  return { caption, seen: 'from above', draw: () => drawing };
}
