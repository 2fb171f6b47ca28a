/* The order of painting, by hand on a box open at the top. */
import { expect, test } from 'vitest';
import { farToNear } from '../../src/plane/far-to-near.js';
import type { Point3 } from '../../src/plane/point3.js';

const at = (x: number, y: number, z: number): Point3 => ({ x, y, z });

/** A floor of 2 × 2, four walls of height 1. */
const FLOOR = [at(0, 0, 0), at(2, 0, 0), at(2, 2, 0), at(0, 2, 0)];
const NEAR = [at(0, 0, 0), at(2, 0, 0), at(2, 0, 1), at(0, 0, 1)];
const FAR = [at(0, 2, 0), at(2, 2, 0), at(2, 2, 1), at(0, 2, 1)];
const LEFT = [at(0, 0, 0), at(0, 2, 0), at(0, 2, 1), at(0, 0, 1)];
const RIGHT = [at(2, 0, 0), at(2, 2, 0), at(2, 2, 1), at(2, 0, 1)];

test('from the front, the right and above: far and left wall behind a card in the box, near and right wall before it', () => {
  const card = [at(0.5, 0.5, 0.5), at(1.5, 0.5, 0.5), at(1.5, 1.5, 0.5), at(0.5, 1.5, 0.5)];
  const order = farToNear([RIGHT, NEAR, card, FAR, LEFT, FLOOR], at(1, -2, 1));
  const place = (index: number): number => order.indexOf(index);
  for (const behind of [3, 4, 5]) expect(place(behind)).toBeLessThan(place(2));
  for (const before of [0, 1]) expect(place(before)).toBeGreaterThan(place(2));
});

test('in one plane they lie as given from above, and the other way about from below', () => {
  const sheet = [at(0, 0, 0), at(1, 0, 0), at(1, 1, 0)];
  expect(farToNear([sheet, sheet, sheet], at(0, 0, 1))).toEqual([0, 1, 2]);
  expect(farToNear([sheet, sheet, sheet], at(0, 0, -1))).toEqual([2, 1, 0]);
});

test('each is painted once, even where none can be told to be behind', () => {
  const crossed = [
    [at(0, 0, 0), at(2, 0, 2), at(2, 2, 2), at(0, 2, 0)],
    [at(0, 0, 2), at(2, 0, 0), at(2, 2, 0), at(0, 2, 2)],
  ];
  expect([...farToNear(crossed, at(0, 0, 1))].sort()).toEqual([0, 1]);
});
