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

/** A square of 1 at a height. */
const sheet = (z: number) => [at(0, 0, z), at(1, 0, z), at(1, 1, z), at(0, 1, z)];
const UP = at(0, 0, 1);

test('of two sheets the lower is painted first, in whichever order and sense they are given', () => {
  expect(farToNear([sheet(1), sheet(0)], UP)).toEqual([1, 0]);
  expect(farToNear([sheet(0), sheet(1)], UP)).toEqual([0, 1]);
  expect(farToNear([sheet(1).reverse(), sheet(0)], UP)).toEqual([1, 0]);
  expect(farToNear([sheet(1), sheet(0).reverse()], UP)).toEqual([1, 0]);
  expect(farToNear([sheet(1), sheet(0)], at(0, 0, -1))).toEqual([0, 1]);
  expect(farToNear([sheet(0), sheet(1)], at(0.5, 3, -0.1))).toEqual([1, 0]);
});

test('a millionth apart they lie in one plane, more apart they do not', () => {
  expect(farToNear([sheet(5e-7), sheet(0)], UP)).toEqual([0, 1]);
  expect(farToNear([sheet(2e-6), sheet(0)], UP)).toEqual([1, 0]);
});

test('of two flaps that meet in a ridge, the one turned away is painted first', () => {
  const left = [at(0, 0, 0), at(1, 0, 1), at(1, 1, 1), at(0, 1, 0)];
  const right = [at(1, 0, 1), at(2, 0, 0), at(2, 1, 0), at(1, 1, 1)];
  expect(farToNear([left, right], at(3, 0, 1))).toEqual([0, 1]);
  expect(farToNear([right, left], at(3, 0, 1))).toEqual([1, 0]);
  expect(farToNear([left, right], at(-3, 0, 1))).toEqual([1, 0]);
});

test('a wall seen edge on is painted after what lies below it, before what lies above', () => {
  const wall = (z: number) => [at(0.5, 0, z), at(0.5, 1, z), at(0.5, 1, z + 1), at(0.5, 0, z + 1)];
  expect(farToNear([wall(1), sheet(0)], UP)).toEqual([1, 0]);
  expect(farToNear([sheet(0), wall(1)], UP)).toEqual([0, 1]);
  expect(farToNear([wall(-2), sheet(0)], UP)).toEqual([0, 1]);
  expect(farToNear([sheet(0), wall(-2)], UP)).toEqual([1, 0]);
});

test('a slanted flap lies behind a sheet that it leans away from', () => {
  // From the sheet's edge down and outwards, and up and outwards.
  const down = [at(1, 0, 0), at(2, 0, -1), at(2, 1, -1), at(1, 1, 0)];
  const up = [at(1, 0, 0), at(2, 0, 1), at(2, 1, 1), at(1, 1, 0)];
  expect(farToNear([sheet(0), down], at(-3, 0, 1))).toEqual([1, 0]);
  expect(farToNear([up, sheet(0)], at(2, 0, 1))).toEqual([1, 0]);
});

test('walls that stand askew are ordered by the distance to the reader, however they are wound', () => {
  // Each square to the direction (3, 4, 0), 5 further along it.
  const wall = (off: number) =>
    [at(-4, 3, 0), at(4, -3, 0), at(4, -3, 2), at(-4, 3, 2)].map(({ x, y, z }) =>
      at(x + 0.6 * off, y + 0.8 * off, z),
    );
  expect(farToNear([wall(5), wall(0)], at(3, 4, 0))).toEqual([1, 0]);
  expect(farToNear([wall(5).reverse(), wall(0)], at(3, 4, 1))).toEqual([1, 0]);
  expect(farToNear([wall(0), wall(5)], at(-3, -4, 1))).toEqual([1, 0]);
});
