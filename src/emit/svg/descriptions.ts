import { FACE_WORDS, rulerOf, sizes } from '../../drawing/words.js';
import { readSizes } from '../../measure/read-sizes.js';
import type { Job } from '../emitter.js';

/** What the drawing of the blank shows, for who cannot see it. */
export const describeBlank = (job: Job): string =>
  [
    `A drawing of the blank before folding, ${TRUE_SIZE}.`,
    FACE_WORDS,
    sizes(job),
    job.folding.made.second
      ? 'Eight scores: four bound the face, four its walls.'
      : 'Four scores bound the face.',
  ].join(' ');

/** What the drawing of a lining shows; nothing of an envelope that has none. */
export function describeLining(job: Job): string {
  const { liner } = job.facts;
  if (!liner) return '';
  return [
    `A drawing of the lining before folding, ${TRUE_SIZE}.`,
    `It shows the side that is seen: ${readSizes(liner, rulerOf(job))}.`,
    liner.folds.length === 1
      ? 'One fold, with the seal flap.'
      : 'Two folds, with the wall and the seal flap.',
  ].join(' ');
}

const TRUE_SIZE = 'at true size: one unit is one millimetre';
