import { expect, test } from 'vitest';
import { distanceFrom } from '../../src/plane/distance-from.js';

const at = (x: number, y: number) => ({ x, y });
/** Three right and four up: five long. */
const SLANTED = { from: at(1, 1), to: at(4, 5) };

test.each([
  ['beside it', at(-3, 4), 5],
  ['on it', at(2.5, 3), 0],
  ['before it', at(-2, -3), 5],
  ['beyond it', at(7, 9), 5],
])('a point %s', (_, point, expected) => {
  expect(distanceFrom(SLANTED, point)).toBeCloseTo(expected, 9);
});

test('a segment without length is a point', () => {
  expect(distanceFrom({ from: at(1, 1), to: at(1, 1) }, at(4, 5))).toBe(5);
});
