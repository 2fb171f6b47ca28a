import type { Folding } from '../../folding/folding.js';
import { waste } from '../../folding/waste.js';
import { OPEN } from '../../folding/pose.js';
import type { Envelope } from '../../recipe/recipe.js';
import { back } from './back.js';
import { boxMoments } from './box-moments.js';
import { closing } from './closing.js';
import { flatMoments } from './flat-moments.js';
import { front } from './front.js';
import { cutBlank, markedBlank, scoredBlank } from './open-blank.js';
import { paperScene } from './paper-scene.js';
import { drawScene } from './scene.js';
import { fromAbove, type Stage } from './stage.js';
import { FROM_ABOVE } from './view.js';

/** The fold from the marked blank to the closed envelope, back and front, in the order of the work. */
export function stages(folding: Folding, envelope: Envelope): readonly Stage[] {
  const closed = back(folding, envelope, 'dashed');
  return [
    fromAbove('Cut the blank, mark its edges.', (pen) => markedBlank(folding, envelope, pen)),
    fromAbove('Score from mark to mark.', (pen) => scoredBlank(folding, envelope, pen)),
    ...cutting(folding, envelope),
    ...lining(folding),
    ...(folding.made.second ? boxMoments(folding, envelope) : flatMoments(folding, envelope)),
    fromAbove(backWords(folding, envelope), () => closed),
    front(folding, envelope),
  ];
}

/** Left out where nothing is cut. */
function cutting(folding: Folding, envelope: Envelope): readonly Stage[] {
  const kinds = new Set(waste(folding).map(({ kind }) => kind));
  if (kinds.size === 0) return [];
  const what = kinds.size > 1 ? 'notches and tips' : kinds.has('tip') ? 'the tips' : 'the notches';
  return [fromAbove(`Cut ${what}.`, (pen) => cutBlank(folding, envelope, pen))];
}

/** Left out where there is none. */
function lining(folding: Folding): readonly Stage[] {
  if (!folding.liner) return [];
  const drawing = drawScene(paperScene(folding, OPEN), FROM_ABOVE, 'left out');
  return [fromAbove('Fold the lining, glue it to the seal flap.', () => drawing)];
}

/** A box is closed in a picture of its own. */
const backWords = (folding: Folding, envelope: Envelope): string =>
  `${folding.made.second ? 'The back' : `${closing(folding, envelope)}: the back`}. Dashed: edges under paper; dotted: glue.`;
