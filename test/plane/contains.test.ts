/* Inside, outside and on the outline, of shapes that lean and turn inwards. */
import { describe, expect, test } from 'vitest';
import { contains } from '../../src/plane/contains.js';

const at = (x: number, y: number) => ({ x, y });
/** A square that stands on its corner, away from the origin. */
const DIAMOND = [at(20, 5), at(30, 15), at(20, 25), at(10, 15)];
/** A `V`: the bay between its arms is outside. */
const ARROW = [at(0, 0), at(6, 10), at(3, 10), at(0, 5), at(-3, 10), at(-6, 10)];

describe.each([
  ['counter-clockwise', <T>(polygon: readonly T[]) => polygon],
  ['clockwise', <T>(polygon: readonly T[]) => polygon.toReversed()],
])('%s', (_, turned) => {
  test.each([
    ['in the middle', 20, 15, true],
    ['just inside a slope', 24.99, 10, true],
    ['just outside a slope', 25.01, 10, false],
    ['just inside the slope opposite', 15.01, 20, true],
    ['on a slope', 25, 10, false],
    ['on the slope opposite', 15, 20, false],
    ['at a corner', 30, 15, false],
    ['beyond a corner, in line with an edge', 31, 16, false],
    ['before a corner, in line with an edge', 19, 4, false],
    ['level with a corner, outside', 40, 15, false],
    ['level with two corners, inside', 11, 15, true],
    ['above the corner on top', 20, 26, false],
  ])('of a square on its corner: %s', (_where, x, y, inside) => {
    expect(contains(turned(DIAMOND), at(x, y))).toBe(inside);
  });

  test.each([
    ['in an arm', 4, 9, true],
    ['in the other', -4, 9, true],
    ['in the bay', 0, 9, false],
    ['below the bay', 0, 4, true],
    ['in line with the bay’s edge, inside the other arm', -1, 10 / 3, true],
    ['in line with an edge, beyond its end', 4, 35 / 3, false],
  ])('of a shape with a bay: %s', (_where, x, y, inside) => {
    expect(contains(turned(ARROW), at(x, y))).toBe(inside);
  });
});

test('noise does not carry a point off a long edge', () => {
  const long = [at(0, 0), at(1000, 0), at(1000, 500), at(0, 500)];
  expect(contains(long, at(500, 5e-7))).toBe(false);
  expect(contains(long, at(500, 2e-6))).toBe(true);
});

test('a corner that is repeated changes nothing', () => {
  const repeated = [at(0, 0), at(0, 0), at(10, 0), at(10, 10), at(0, 10)];
  expect(contains(repeated, at(5, 5))).toBe(true);
  expect(contains(repeated, at(0, 0))).toBe(false);
});
