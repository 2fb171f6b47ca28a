import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import { measure } from '../../src/folding/measure.js';
import { nonsense } from '../support/arbitraries.js';
import { envelope } from '../support/envelopes.js';

test('any blank and any marks, sense or nonsense, fold to finite numbers', () => {
  fc.assert(
    fc.property(nonsense, (wishes) => {
      const envelopeWished = envelope(wishes);
      const facts = measure(envelopeWished, fold(envelopeWished));
      const numbers = JSON.stringify(facts, (_, value) => {
        if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
        return value;
      });
      expect(numbers).toBeTruthy();
    }),
    { seed: 6, numRuns: 1000 },
  );
});
