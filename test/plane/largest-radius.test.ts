import { expect, test } from 'vitest';
import { largestRadius } from '../../src/plane/largest-radius.js';

const corner = (x: number, y: number, radius = 0) => ({ x, y, radius });

test('a right angle can be rounded until the arc uses up its shorter edge', () => {
  // r·tan(45°) = r along each edge
  expect(largestRadius([corner(0, 0, 1), corner(30, 0), corner(0, 20)])).toBeCloseTo(20, 9);
});

test('two rounded neighbours share the edge between them', () => {
  const [a, b] = [corner(0, 0, 1), corner(30, 0, 1)];
  expect(largestRadius([a, b, corner(30, 100), corner(0, 100)])).toBeCloseTo(15, 9);
});

test('an obtuse corner takes a larger radius: r·tan(22.5°) along an edge', () => {
  const corners = [corner(0, 0), corner(40, 0, 1), corner(60, 20), corner(0, 20)];
  expect(largestRadius(corners)).toBeCloseTo((20 * Math.SQRT2) / Math.tan(Math.PI / 8), 9);
});

test('the circle within a triangle is as large as its corners allow, wherever it lies', () => {
  // Legs of 9 and 12 and a long side of 15; half the angle at (19, 7) has a tangent of 1/3, at (7, 16) of 1/2.
  const [right, sharp, blunter] = [corner(7, 7), corner(19, 7), corner(7, 16)];
  expect(largestRadius([right, { ...sharp, radius: 1 }, blunter])).toBeCloseTo(12 / 3, 9);
  expect(largestRadius([right, sharp, { ...blunter, radius: 1 }])).toBeCloseTo(9 / 2, 9);
});

test('nothing rounded, nothing to limit', () => {
  expect(largestRadius([corner(0, 0), corner(1, 0), corner(0, 1)])).toBe(Infinity);
});
