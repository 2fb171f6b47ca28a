import type { Job } from '../emitter.js';
import { FACE_WORDS, sizes } from '../../drawing/words.js';

/** What the true-size drawing shows, for who cannot see it. */
export const describe = (job: Job): string =>
  [
    'A drawing of the blank before folding, at true size: one unit is one millimetre.',
    FACE_WORDS,
    sizes(job),
    job.folding.made.second
      ? 'Eight scores: four bound the face, four its walls.'
      : 'Four scores bound the face.',
  ].join(' ');
