// Laws as the other tests hold them, each tried on a few cases only, always the same, and no smaller one sought for what fails.
import { createRequire } from 'node:module';
import type fc from 'fast-check';

const RUNS = 12;

const whole = createRequire(import.meta.url)('fast-check') as typeof fc;

// oxlint-disable-next-line import/no-default-export -- it stands for a module that has one
export default {
  ...whole,
  assert: <Values>(
    property: fc.IRawProperty<Values>,
    { numRuns = RUNS, ...rest }: fc.Parameters<Values> = {},
  ): void | Promise<void> =>
    whole.assert(property, { seed: 1, ...rest, numRuns: Math.min(numRuns, RUNS), endOnFailure: true }),
};
