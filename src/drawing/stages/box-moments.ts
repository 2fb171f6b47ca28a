import type { Folding } from '../../folding/folding.js';
import { closedPose, OPEN, type Pose } from '../../folding/pose.js';
import type { Envelope } from '../../recipe/recipe.js';
import { closedScene } from './back.js';
import { cardGoingIn } from './card-leaf.js';
import { closing } from './closing.js';
import { paperScene } from './paper-scene.js';
import { drawScene, type Scene } from './scene.js';
import type { Stage } from './stage.js';
import { CENTRE_STRIP, LOWER_STRIPS, SEAL_STRIPS } from './strips.js';
import { OBLIQUE } from './view.js';

/** A box between the cut blank and its back, seen obliquely so that its walls stand. */
export function boxMoments(folding: Folding, envelope: Envelope): readonly Stage[] {
  const { made, centreSeam } = folding;
  const bottomUp = { ...closedPose(made), seal: OPEN.seal };
  const within = cardGoingIn(made, envelope.card.value);
  return [
    shown('Fold up: the walls stand.', paperScene(folding, WALLS_UP)),
    shown(
      `Left flap in, then right${centreSeam ? ', glued to it' : ''}. Bottom flap over them, glued.`,
      paperScene(folding, bottomUp, { glue: [...CENTRE_STRIP, ...LOWER_STRIPS] }),
    ),
    shown('Card in.', paperScene(folding, bottomUp, { glue: SEAL_STRIPS, within })),
    shown(`${closing(folding, envelope)}.`, closedScene(folding, envelope)),
  ];
}

/** Walls standing, flaps still in line with them. */
const RISING = { first: 90, second: 0 };
export const WALLS_UP: Pose = { left: RISING, right: RISING, seal: RISING, bottom: RISING };

function shown(caption: string, scene: Scene): Stage {
  const drawing = drawScene(scene, OBLIQUE, 'left out');
  return { caption, seen: 'obliquely', draw: () => drawing };
}
