/* Hatching fills an outline of any shape, and nothing outside it. */
import { expect, test } from 'vitest';
import { hatch } from '../../src/drawing/hatch.js';

const lengthOf = (lines: ReturnType<typeof hatch>): number =>
  lines.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);

const square = [
  { x: 0, y: 0 },
  { x: 10, y: 0 },
  { x: 10, y: 10 },
  { x: 0, y: 10 },
];

test('lines at a distance d cover an area a with about a / d of length', () => {
  expect(lengthOf(hatch(square, 0.1))).toBeCloseTo(100 / 0.1, -1);
});

test('an outline that turns inwards is filled on both sides of the bay, not across it', () => {
  const bay = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 10 },
    { x: 5, y: 2 },
    { x: 0, y: 10 },
  ];
  // The square less a triangle of base 10 and height 8.
  expect(lengthOf(hatch(bay, 0.1))).toBeCloseTo((100 - 40) / 0.1, -1);
});
