import { blankWords } from '../folding/blank-words.js';
import { FLAP_NAMES, type Folding } from '../folding/folding.js';
import { readSizes } from '../measure/read-sizes.js';
import type { Ruler } from '../measure/ruler.js';
import { flatten } from '../plane/path.js';
import { bounds } from '../plane/polygon.js';
import { edgeLengths, type EdgeLengths } from './blank-dimensions.js';
import { type Drawn, rulerOf } from './words.js';

/** What a picture of before and after says in words: how to read it, and what its lines alone do not tell. */
export function beforeAfterWords(before: Drawn, after: Drawn): string {
  const ruler = rulerOf(after);
  const lining = liningWords(after.folding, ruler);
  const formerLining = liningWords(before.folding, ruler);
  return [
    'Dashed: what it was. Seen from the inside.',
    `${blankWords(after.folding, ruler)}.`,
    ...(after.folding.liner ? ['The outline within is the lining.'] : []),
    ...(lining === formerLining ? [] : [`Lining ${lining}, was ${formerLining}.`]),
    ...GONE.flatMap(([kind, words]) => {
      const flaps = FLAP_NAMES.filter(
        (flap) => edgeLengths(before.folding, flap)[kind] > 0 && edgeLengths(after.folding, flap)[kind] === 0,
      );
      return flaps.length === 0 ? [] : [`No longer: ${words} at ${flaps.join(', ')}.`];
    }),
  ].join(' ');
}

/** What may have been there before and be no more. */
const GONE: readonly (readonly [kind: keyof EdgeLengths, words: string])[] = [
  ['second', 'second marks'],
  ['cut', 'the cut of the tip'],
];

function liningWords({ liner }: Folding, ruler: Ruler): string {
  if (!liner) return 'none';
  const { min, max } = bounds(flatten(liner.outline));
  return readSizes({ width: max.x - min.x, height: max.y - min.y }, ruler);
}
