// Laws as the other tests hold them, each tried on an eighth of its cases, a dozen at most, always the same; no smaller case is
// sought for one that fails. (A mutant has to be met by thousands of runs.)
import { createRequire } from 'node:module';
import type fc from 'fast-check';

const whole = createRequire(import.meta.url)('fast-check') as typeof fc;

// oxlint-disable-next-line import/no-default-export -- it stands for a module that has one
export default {
  ...whole,
  assert: <Values>(
    property: fc.IRawProperty<Values>,
    { numRuns = 100, ...rest }: fc.Parameters<Values> = {},
  ): void | Promise<void> =>
    whole.assert(property, {
      seed: 1,
      ...rest,
      numRuns: Math.min(Math.ceil(numRuns / 8), 12),
      endOnFailure: true,
    }),
};
