import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import { measure } from '../../src/folding/measure.js';
import { envelope } from '../support/envelopes.js';

const length = fc.oneof(
  fc.double({ min: 0, max: 5000, noNaN: true }),
  fc.double({ min: 0, max: 300, noNaN: true }),
);
const some = <T>(value: fc.Arbitrary<T>) => fc.option(value, { freq: 2 });
const shape = some(
  fc.oneof(
    length.map((radius) => ({ kind: 'rounded' as const, radius })),
    fc.tuple(length, length).map(([cut, radius]) => ({ kind: 'blunt' as const, cut, radius })),
    fc.constant({ kind: 'pointed' as const }),
  ),
);
const treatment = fc.constantFrom('folded' as const, 'notched' as const);

test('any blank and any marks, sense or nonsense, fold to finite numbers', () => {
  const nonsense = fc.record({
    face: fc
      .record({ width: length, height: length })
      .map(({ width, height }) => ({ width: width + 0.1, height: height + 0.1 })),
    seam: length,
    depth: some(length).map((depth) => depth ?? 0),
    shift: some(length).map((shift) => shift ?? 0),
    blank: some(fc.record({ width: length, height: length })).map(
      (blank) => blank && { width: blank.width + 0.1, height: blank.height + 0.1 },
    ),
    sideMarks: some(fc.tuple(length, length)),
    sealMark: some(length),
    bottomMark: some(length),
    flap: shape,
    bottom: shape,
    sides: shape,
    corners: fc.record({ bottom: treatment, seal: treatment }),
    caliper: fc.double({ min: 0, max: 5, noNaN: true }),
  });
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
