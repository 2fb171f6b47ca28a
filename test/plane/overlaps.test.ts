import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clip } from '../../src/plane/clip.js';
import { overlaps } from '../../src/plane/overlaps.js';
import type { Polygon } from '../../src/plane/polygon.js';
import { regionArea, subtract } from '../../src/plane/region.js';

const box = (left: number, bottom: number, width: number, height: number): Polygon => [
  { x: left, y: bottom },
  { x: left + width, y: bottom },
  { x: left + width, y: bottom + height },
  { x: left, y: bottom + height },
];

test('what lies over each other is covered once, and counted as often as it is laid', () => {
  expect(overlaps([box(0, 0, 4, 4)], 0)).toEqual({ covered: 16, deepest: 1 });
  expect(overlaps([box(0, 0, 4, 4), box(4, 0, 4, 4)], 0)).toEqual({ covered: 32, deepest: 1 });
  expect(overlaps([box(0, 0, 4, 4), box(3, 0, 4, 4)], 0)).toEqual({ covered: 28, deepest: 2 });
  expect(overlaps([box(0, 0, 4, 4), box(3, 0, 4, 4), box(0, 3, 9, 4)], 0)).toEqual({
    covered: 57,
    deepest: 3,
  });
  expect(overlaps([box(0, 0, 4, 4), box(0, 0, 4, 4), box(0, 0, 4, 4)], 0)).toEqual({
    covered: 16,
    deepest: 3,
  });
});

test('the deepest place need not be under the first', () => {
  expect(overlaps([box(0, 0, 2, 2), box(9, 0, 2, 2), box(10, 0, 2, 2)], 0).deepest).toBe(2);
});

test('an overlap within the noise adds no depth, and is covered once all the same', () => {
  const two = [box(0, 0, 4, 4), box(3.9, 0, 4, 4)];
  expect(overlaps(two, 1).deepest).toBe(1);
  expect(overlaps(two, 1).covered).toBeCloseTo(31.6, 9);
});

test('nothing covers nothing', () => {
  expect(overlaps([], 0)).toEqual({ covered: 0, deepest: 0 });
  expect(overlaps([[]], 0)).toEqual({ covered: 0, deepest: 0 });
});

test('what is covered is what a polygon library finds', () => {
  const side = fc.integer({ min: -40, max: 40 });
  const cut = fc.record({ a: side, b: side, c: fc.integer({ min: 0, max: 3000 }) });
  const convex = fc
    .tuple(side, side, fc.array(cut, { maxLength: 4 }))
    .map(([x, y, cuts]) => clip(box(x, y, 50, 40), cuts));
  const frame = box(-50, -50, 200, 200);
  fc.assert(
    fc.property(fc.array(convex, { maxLength: 5 }), (polygons) => {
      const bare = regionArea(subtract([frame], polygons));
      expect(overlaps(polygons, 0).covered).toBeCloseTo(regionArea([frame]) - bare, 2);
    }),
  );
});
