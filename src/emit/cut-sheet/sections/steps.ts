import type { Bench } from '../bench.js';
import type { Section, Step } from '../content.js';
import { centreSeam, closing, finish, lowerSeams } from '../steps/gluing.js';
import { cutTheBlank, decorate, lookToTheGrain, makeTheMarks, nameTheCorners } from '../steps/flat.js';
import { lining } from '../steps/lining.js';
import { dryFold, foldIt, notchesAndTips, oddScores, score } from '../steps/folding.js';

/** What is done at the bench, in order. A step that this envelope does not need is null. */
const STEPS: readonly ((bench: Bench) => Step | null)[] = [
  lookToTheGrain,
  cutTheBlank,
  nameTheCorners,
  makeTheMarks,
  decorate,
  score,
  oddScores,
  notchesAndTips,
  foldIt,
  lining,
  dryFold,
  centreSeam,
  lowerSeams,
  closing,
  finish,
];

export const steps = (bench: Bench): Section => ({
  name: 'steps',
  heading: 'At the bench',
  blocks: [{ kind: 'steps', steps: STEPS.map((step) => step(bench)).filter((step) => step !== null) }],
});
