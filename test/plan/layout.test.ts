import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cuttingOrder } from '../../src/plan/layout/cutting-order.js';
import { layOut } from '../../src/plan/layout/lay-out.js';
import type { Wanted } from '../../src/plan/layout/layout.js';
import { lowerBound } from '../../src/plan/layout/lower-bound.js';
import { mostOfOne } from '../../src/plan/layout/most-of-one.js';
import { placed } from '../../src/plan/layout/placed.js';
import { replay } from './replay.js';

const IN = 25.4;
const square = (inches: number, count: number): Wanted => ({
  width: inches * IN,
  height: inches * IN,
  count,
});
const size = (width: number, height: number) => ({ width: width * IN, height: height * IN });

const sheetsOf = (wanted: readonly Wanted[], sheet: { width: number; height: number }): number =>
  layOut(wanted, sheet).reduce((sum, { sheets }) => sum + sheets, 0);

describe('squares from a sheet, as counted by hand', () => {
  test.each([
    // Floor(25 / 8.5) · floor(38 / 8.5) = 2 · 4
    { side: 8.5, sheet: size(25, 38), yields: 8 },
    // Floor(8.5 / 5.5) · floor(11 / 5.5) = 1 · 2
    { side: 5.5, sheet: size(8.5, 11), yields: 2 },
    { side: 8.485, sheet: size(12, 12), yields: 1 },
  ])('$side in: $yields', ({ side, sheet, yields }) => {
    expect(mostOfOne(square(side, 1), 0, sheet).count).toBe(yields);
    expect(sheetsOf([square(side, 5 * yields)], sheet)).toBe(5);
    expect(sheetsOf([square(side, 5 * yields + 1)], sheet)).toBe(6);
    // What no layout can beat says the same: the plan is as good as can be.
    expect(lowerBound([square(side, 5 * yields + 1)], sheet).sheets).toBe(6);
  });
});

test('pieces of one size that lie both ways: four about a hole cannot be cut edge to edge, rows of both can', () => {
  // 2 x 1 on 3 x 3: four and a hole in the middle for loose pieces; edge to edge, a row of three standing and one lying.
  expect(mostOfOne({ width: 2, height: 1 }, 0, { width: 3, height: 3 }).count).toBe(4);
  // 5 x 3 on 8 x 8: rows of one kind hold 2 · 1 = 2 (5 along 8 once, 3 twice); 5 + 3 both ways come to 4 only about a hole.
  expect(mostOfOne({ width: 5, height: 3 }, 0, { width: 8, height: 8 }).count).toBe(3);
});

const pieces = (most: number) =>
  fc.array(
    fc
      .record({
        width: fc.integer({ min: 30, max: 300 }),
        height: fc.integer({ min: 30, max: 300 }),
        count: fc.integer({ min: 1, max: 60 }),
        isSquare: fc.boolean(),
      })
      .map(
        ({ width, height, count, isSquare }): Wanted => ({ width, height: isSquare ? width : height, count }),
      ),
    { minLength: 1, maxLength: most },
  );
const sheets = fc.record({
  width: fc.integer({ min: 300, max: 1000 }),
  height: fc.integer({ min: 300, max: 1000 }),
});

test('whoever cuts by the steps gets what was asked for, and never from fewer sheets than can be', () => {
  fc.assert(
    fc.property(pieces(7), sheets, (wanted, sheet) => {
      const made = wanted.map(() => 0);
      let taken = 0;
      for (const { sheets: times, layout } of layOut(wanted, sheet)) {
        taken += times;
        replay(cuttingOrder(layout, sheet, wanted), sheet, wanted).forEach((count, index) => {
          made[index] = (made[index] ?? 0) + times * count;
        });
      }
      expect(made).toEqual(wanted.map(({ count }) => count));
      const { area, sheets: least } = lowerBound(wanted, sheet);
      expect(area).toBeLessThanOrEqual(least);
      expect(least).toBeLessThanOrEqual(taken);
    }),
    { numRuns: 60, seed: 7 },
  );
});

test('nothing lies over anything else, nor outside the sheet, and the areas add up to the sheet', () => {
  fc.assert(
    fc.property(pieces(5), sheets, (wanted, sheet) => {
      for (const { layout } of layOut(wanted, sheet)) {
        const all = placed(layout, sheet);
        for (const { x, y, width, height } of all) {
          expect(x).toBeGreaterThan(-1e-6);
          expect(y).toBeGreaterThan(-1e-6);
          expect(x + width).toBeLessThan(sheet.width + 1e-6);
          expect(y + height).toBeLessThan(sheet.height + 1e-6);
        }
        for (const [index, one] of all.entries())
          for (const other of all.slice(index + 1)) {
            const across = Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x);
            const up = Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y);
            expect(Math.min(across, up)).toBeLessThan(1e-6);
          }
        const area = all.reduce((sum, { width, height }) => sum + width * height, 0);
        expect(area).toBeCloseTo(sheet.width * sheet.height, 3);
      }
    }),
    { numRuns: 30, seed: 11 },
  );
});

test('one size never yields less than plain rows', () => {
  fc.assert(
    fc.property(pieces(1), sheets, ([piece = { width: 1, height: 1, count: 1 }], sheet) => {
      const rows = (a: number, b: number): number =>
        Math.floor(sheet.width / a) * Math.floor(sheet.height / b);
      const { width, height } = piece;
      const yields = mostOfOne(piece, 0, sheet).count;
      expect(yields).toBeGreaterThanOrEqual(Math.max(rows(width, height), rows(height, width)));
      expect(sheetsOf([piece], sheet)).toBe(Math.ceil(piece.count / yields));
    }),
    { numRuns: 60, seed: 13 },
  );
});

test('500 envelopes of 12 sizes come out the same each time', () => {
  const wanted = Array.from({ length: 12 }, (_, index) => square(5 + index * 0.75, 30 + index * 2));
  const plan = layOut(wanted, size(25, 38));
  expect(layOut(wanted, size(25, 38))).toEqual(plan);
});
