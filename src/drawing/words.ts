import { blankWords } from '../folding/blank-words.js';
import type { Folding } from '../folding/folding.js';
import { readSizes } from '../measure/read-sizes.js';
import { otherLength, readLength, type Ruler } from '../measure/ruler.js';
import type { Envelope } from '../recipe/recipe.js';

/** What a drawing is made from. */
export interface Drawn {
  readonly envelope: Envelope;
  readonly folding: Folding;
}

export const FACE_WORDS = 'It shows the inside of the paper: lay the show side down.';

export const rulerOf = ({ envelope }: Drawn): Ruler => ({
  units: envelope.units,
  step: envelope.step.value,
});

/** `Blank 11 1/4 in square (285.8 mm). Face 8 3/4 × 5 3/4 in (222.3 × 145.9 mm).` */
export function sizes(of: Drawn): string {
  const { face, depth } = of.folding.made;
  const ruler = rulerOf(of);
  const parts = [
    `${blankWords(of.folding, ruler)}.`,
    `Face ${readSizes(face, ruler)}.`,
    ...(depth > 0 ? [`Depth ${readLength(depth, ruler)} (${otherLength(depth, ruler)}).`] : []),
  ];
  return parts.join(' ');
}

/** `Card 8 1/2 × 5 1/2 in (215.9 × 139.7 mm)` */
export const cardWords = (of: Drawn): string => `Card ${readSizes(of.envelope.card.value, rulerOf(of))}`;
