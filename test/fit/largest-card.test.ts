import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boxDepth } from '../../src/fit/box-depth.js';
import { type Asked, largestCard, STEP, wishOf } from '../../src/fit/largest-card.js';
import { recipeText } from '../../src/fit/wish.js';
import { tryRecipe } from '../../src/cli/fit/answer.js';
import { compileText } from '../support/compile-text.js';

/** Whether `check` finds nothing but notes. */
const isAccepted = (text: string): boolean =>
  compileText(text).diagnostics.every(({ severity }) => severity === 'note');

const sheets = fc.constantFrom('mm' as const, 'in' as const).chain((units) =>
  fc.record({
    units: fc.constant(units),
    sheet: fc.record({
      width: fc
        .integer({ min: 250, max: 1000 })
        .map((steps) => (units === 'in' ? (steps * 25.4) / 25 : steps)),
      height: fc
        .integer({ min: 250, max: 1000 })
        .map((steps) => (units === 'in' ? (steps * 25.4) / 25 : steps)),
    }),
    ratio: fc.constantFrom(1, 1.25, 1.4, Math.SQRT2, 17 / 11, 2.1),
    depth: fc.constantFrom(0, 0, 8 * STEP[units], 16 * STEP[units]),
  }),
);

test('the largest card passes every check, and one step of the ruler more fails one', () => {
  fc.assert(
    fc.property(sheets, (asked: Asked) => {
      const found = largestCard(asked, tryRecipe);
      if (found === null) throw new Error('a sheet of 250 mm serves some card of every shape');
      expect(isAccepted(recipeText(found.wish))).toBe(true);
      const steps = Math.round(found.wish.card.width / STEP[asked.units]);
      const more = recipeText(wishOf(asked, steps + 1));
      expect(more).not.toBe(recipeText(found.wish));
      expect(isAccepted(more)).toBe(false);
    }),
    { numRuns: 40, seed: 5 },
  );
});

test('a sheet of 12 in takes the half-letter card, as makers know (common practice, no source)', () => {
  const found = largestCard(
    { units: 'in', sheet: { width: 304.8, height: 304.8 }, ratio: 8.5 / 5.5, depth: 0 },
    tryRecipe,
  );
  expect(found?.wish.card.width).toBeGreaterThanOrEqual(8.5 * 25.4);
});

test('a sheet too small for any envelope gives none', () => {
  expect(largestCard({ units: 'mm', sheet: { width: 30, height: 30 }, ratio: 1, depth: 0 }, tryRecipe)).toBe(
    null,
  );
});

test('a thick card gets walls that hold it, a thin one none', () => {
  const card = { width: 177.8, height: 127 };
  expect(boxDepth({ units: 'in', card, bulk: 3 }, tryRecipe)).toBe(0);
  const depth = boxDepth({ units: 'in', card, bulk: 4 }, tryRecipe);
  expect(depth).toBeGreaterThanOrEqual(4);
  expect(isAccepted(recipeText({ units: 'in', card, bulk: 4, depth }))).toBe(true);
});
