import type { FlapName } from '../../folding/folding.js';
import type { Job } from '../emitter.js';
import { type Lengths, lengths } from './lengths.js';

/** What every section works from: the job, and its lengths in its own units. */
export interface Bench extends Job {
  readonly say: Lengths;
}

export const bench = (job: Job): Bench => ({
  ...job,
  say: lengths({ units: job.envelope.units, step: job.envelope.step.value }),
});

/** The end flaps whose corner pieces are treated so. */
export const endsThatAre = ({ folding }: Bench, treatment: 'folded' | 'notched'): readonly FlapName[] =>
  (['bottom', 'seal'] as const).filter((end) => folding.made.corners[end] === treatment);
