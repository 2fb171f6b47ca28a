import fc from 'fast-check';
import { expect, test } from 'vitest';
import { brokenPromises } from './broken-promises.js';
import { specFiles } from './specs.js';

/**
 * Compiles texts of a kind, half of them with nothing to use and half beside the recipes that come with plica, and
 * expects the promises kept by each. In rounds, so that a run is seen to go on.
 */
export function keepsPromises(
  kind: fc.Arbitrary<string>,
  { rounds, texts }: { readonly rounds: number; readonly texts: number },
): void {
  test.each(Array.from({ length: rounds }, (_, round) => round + 1))(
    'round %i',
    (round) => {
      fc.assert(
        fc.property(kind, fc.constantFrom({}, specFiles), (text, files) => {
          expect(brokenPromises(text, { files })).toEqual([]);
        }),
        { seed: round, numRuns: texts },
      );
    },
    120_000,
  );
}
