import fc from 'fast-check';
import polygonClipping from 'polygon-clipping';
import { expect, test } from 'vitest';
import type { Polygon } from '../../src/plane/polygon.js';
import { intersect, regionArea, subtract } from '../../src/plane/region.js';

const square = (x: number, y: number, side: number): Polygon => [
  { x, y },
  { x: x + side, y },
  { x: x + side, y: y + side },
  { x, y: y + side },
];

test('what is taken away is gone, whichever way round it was drawn', () => {
  expect(regionArea(subtract([square(0, 0, 10)], [square(5, 5, 10)]))).toBeCloseTo(75, 6);
  expect(regionArea(subtract([square(0, 0, 10)], [[...square(5, 5, 10)].reverse()]))).toBeCloseTo(75, 6);
});

test('two covers that overlap do not cancel out', () => {
  const left = square(0, 0, 6);
  const mirrored = [...square(4, 0, 6)].reverse();
  expect(regionArea(subtract([square(0, 0, 10)], [left, mirrored]))).toBeCloseTo(100 - 60, 6);
});

test('what is no area neither takes nor gives', () => {
  const line = square(0, 0, 10).slice(0, 2);
  expect(subtract([square(0, 0, 10)], [[], line])).toEqual(subtract([square(0, 0, 10)], []));
  expect(intersect([line, []], [square(0, 0, 10)])).toEqual([]);
});

test('a hole counts as not there', () => {
  expect(regionArea(subtract([square(0, 0, 10)], [square(4, 4, 2)]))).toBeCloseTo(96, 6);
});

/** A triangle with corners on a grid coarse enough for both libraries to agree on what touches. */
const triangle = fc
  .tuple(...Array.from({ length: 6 }, () => fc.integer({ min: -400, max: 400 })))
  .map(
    ([a, b, c, d, e, f]): Polygon => [
      { x: a as number, y: b as number },
      { x: c as number, y: d as number },
      { x: e as number, y: f as number },
    ],
  )
  .filter(([p, q, r]) => {
    if (!p || !q || !r) return false;
    return Math.abs((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x)) > 500;
  });

const ring = (polygon: Polygon): [number, number][] => polygon.map(({ x, y }) => [x, y]);

const otherArea = (regions: [number, number][][][]): number =>
  regions.reduce(
    (sum, rings) =>
      sum +
      rings.reduce((within, points, index) => {
        let twice = 0;
        points.forEach(([x, y], at) => {
          const [nextX, nextY] = points[(at + 1) % points.length] as [number, number];
          twice += x * nextY - nextX * y;
        });
        return within + (index === 0 ? 1 : -1) * Math.abs(twice / 2);
      }, 0),
    0,
  );

test('another polygon library finds the same areas', () => {
  fc.assert(
    fc.property(triangle, triangle, (one, other) => {
      const common = otherArea(polygonClipping.intersection([ring(one)], [ring(other)]));
      const left = otherArea(polygonClipping.difference([ring(one)], [ring(other)]));
      expect(regionArea(intersect([one], [other]))).toBeCloseTo(common, 1);
      expect(regionArea(subtract([one], [other]))).toBeCloseTo(left, 1);
    }),
    { seed: 5, numRuns: 300 },
  );
});
