import type { Folding } from '../../folding/folding.js';
import { zones } from '../../folding/zones.js';
import type { Envelope } from '../../recipe/recipe.js';
import { back } from './back.js';
import { boxMoments } from './box-moments.js';
import { flatMoments } from './flat-moments.js';
import { front } from './front.js';
import { closing } from './closing.js';
import { cutBlank, markedBlank, scoredBlank } from './open-blank.js';
import type { Stage } from './stage.js';

/** The fold from the marked blank to the closed envelope, back and front, in the order of the work. */
export const stages = (folding: Folding, envelope: Envelope): readonly Stage[] => [
  fromAbove('Cut the blank, mark its edges.', (pen) => markedBlank(folding, envelope, pen)),
  fromAbove('Score from mark to mark.', (pen) => scoredBlank(folding, envelope, pen)),
  ...cutting(folding, envelope),
  ...(folding.made.second ? boxMoments(folding, envelope) : flatMoments(folding, envelope)),
  fromAbove(backWords(folding, envelope), () => back(folding, envelope, 'dashed')),
  fromAbove(frontWords(folding, envelope), (pen) => front(folding, envelope, pen)),
];

const fromAbove = (caption: string, draw: Stage['draw']): Stage => ({ caption, seen: 'from above', draw });

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

function frontWords(folding: Folding, envelope: Envelope): string {
  const { address, stamp } = zones(envelope, folding).front;
  return address && stamp ? 'The front: room for address and stamp.' : 'The front.';
}
