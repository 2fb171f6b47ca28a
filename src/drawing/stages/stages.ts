import type { Folding } from '../../folding/folding.js';
import type { Envelope } from '../../recipe/recipe.js';
import { back } from './back.js';
import { boxMoments } from './box-moments.js';
import { flatMoments } from './flat-moments.js';
import { front } from './front.js';
import { fromAbove } from './stage.js';
import { closing } from './closing.js';
import { cutBlank, markedBlank, scoredBlank } from './open-blank.js';
import type { Stage } from './stage.js';

/** The fold from the marked blank to the closed envelope, back and front, in the order of the work. */
export function stages(folding: Folding, envelope: Envelope): readonly Stage[] {
  const closed = back(folding, envelope, 'dashed');
  return [
    fromAbove('Cut the blank, mark its edges.', (pen) => markedBlank(folding, envelope, pen)),
    fromAbove('Score from mark to mark.', (pen) => scoredBlank(folding, envelope, pen)),
    ...cutting(folding, envelope),
    ...(folding.made.second ? boxMoments(folding, envelope) : flatMoments(folding, envelope)),
    fromAbove(backWords(folding, envelope), () => closed),
    front(folding, envelope),
  ];
}

/** Left out where nothing is cut. */
function cutting(folding: Folding, envelope: Envelope): readonly Stage[] {
  const kinds = new Set(folding.offcuts.map(({ kind }) => kind));
  if (kinds.size === 0) return [];
  const what = kinds.size > 1 ? 'notches and tips' : kinds.has('tip') ? 'the tips' : 'the notches';
  return [fromAbove(`Cut ${what}.`, (pen) => cutBlank(folding, envelope, pen))];
}

/** A box is closed in a picture of its own. */
const backWords = ({ made }: Folding, envelope: Envelope): string =>
  `${made.second ? 'The back' : `${closing(envelope)}: the back`}. Dashed: edges under paper.`;
