/* Whatever the program, everything can be made of it: whole, readable by others, without a nonsense figure, the same each time. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { brokenOutputLaws } from '../support/output-laws.js';
import { programs } from '../support/programs.js';

test('of any program', async () => {
  await fc.assert(
    fc.asyncProperty(programs, async ([before, after]) => {
      expect(await brokenOutputLaws(after, before), after).toEqual([]);
    }),
    { seed: 4, numRuns: 2 },
  );
}, 180_000);
