/* A line divided where it passes under things, by hand. */
import { expect, test } from 'vitest';
import { apartFrom } from '../../src/plane/apart-from.js';
import { contains } from '../../src/plane/contains.js';
import { hiddenParts } from '../../src/plane/hidden-parts.js';
import type { Segment } from '../../src/plane/point.js';
import type { Polygon } from '../../src/plane/polygon.js';

const at = (x: number, y: number) => ({ x, y });
const segment = (x1: number, y1: number, x2: number, y2: number): Segment => ({
  from: at(x1, y1),
  to: at(x2, y2),
});
const rectangle = (x1: number, y1: number, x2: number, y2: number): Polygon => [
  at(x1, y1),
  at(x2, y1),
  at(x2, y2),
  at(x1, y2),
];
const level = segment(0, 5, 10, 5);
const ends = (parts: readonly Segment[]) => parts.map(({ from, to }) => [from.x, to.x]);

test('clear of everything, a line is seen whole', () => {
  const { seen, hidden } = hiddenParts(level, [rectangle(0, 6, 10, 9)]);
  expect(ends(seen)).toEqual([[0, 10]]);
  expect(hidden).toEqual([]);
});

test('under a rectangle, it is hidden from one side to the other', () => {
  const { seen, hidden } = hiddenParts(level, [rectangle(3, 0, 6, 9)]);
  expect(ends(seen)).toEqual([
    [0, 3],
    [6, 10],
  ]);
  expect(ends(hidden)).toEqual([[3, 6]]);
});

test('under two that overlap, it is hidden once', () => {
  const { hidden } = hiddenParts(level, [rectangle(2, 0, 5, 9), rectangle(4, 0, 7, 9)]);
  expect(ends(hidden)).toEqual([[2, 7]]);
});

test('along an outline it is seen', () => {
  const { seen, hidden } = hiddenParts(level, [rectangle(2, 5, 8, 9)]);
  expect(ends(seen)).toEqual([[0, 10]]);
  expect(hidden).toEqual([]);
});

test('under a corner that points at it, only from slope to slope', () => {
  // A triangle's slopes of 45° meet the line 2 before and after its tip at (5, 7).
  const { hidden } = hiddenParts(level, [[at(0, 2), at(10, 2), at(5, 7)]]);
  const [[from, to] = []] = ends(hidden);
  expect(from).toBeCloseTo(3, 9);
  expect(to).toBeCloseTo(7, 9);
});

test('in the bay of a polygon that is not convex, it is seen', () => {
  const bay: Polygon = [at(1, 0), at(9, 0), at(9, 9), at(7, 9), at(7, 2), at(3, 2), at(3, 9), at(1, 9)];
  const { hidden } = hiddenParts(level, [bay]);
  expect(ends(hidden)).toEqual([
    [1, 3],
    [7, 9],
  ]);
});

test('an edge that ends short of the line, or begins past it, divides nothing', () => {
  const far = segment(0, 5, 4, 5);
  // The rectangle’s sides would meet the line beyond its end.
  expect(hiddenParts(far, [rectangle(6, 0, 8, 9)])).toEqual({ seen: [far], hidden: [] });
  expect(hiddenParts(segment(9, 5, 12, 5), [rectangle(6, 0, 8, 9)]).hidden).toEqual([]);
});

test('a slanted line is hidden between the crossings of a leaning shape', () => {
  // A square on its corner about (20, 15), 10 to each corner; the line climbs 3 : 4 through its middle.
  const diamond: Polygon = [at(20, 5), at(30, 15), at(20, 25), at(10, 15)];
  const { seen, hidden } = hiddenParts(segment(8, -1, 32, 31), [diamond]);
  // |x − 20| + |y − 15| = 10 where 3t + 4t = 10.
  expect(hidden).toEqual([
    {
      from: { x: expect.closeTo(20 - 30 / 7, 6), y: expect.closeTo(15 - 40 / 7, 6) },
      to: { x: expect.closeTo(20 + 30 / 7, 6), y: expect.closeTo(15 + 40 / 7, 6) },
    },
  ]);
  expect(seen).toHaveLength(2);
});

test('a stretch that starts under a shape is hidden from its start', () => {
  const { seen, hidden } = hiddenParts(segment(4, 5, 10, 5), [rectangle(3, 0, 6, 9)]);
  expect(ends(hidden)).toEqual([[4, 6]]);
  expect(ends(seen)).toEqual([[6, 10]]);
});

test.each([
  ['the middle', 5, 5, true],
  ['a corner', 0, 0, false],
  ['the edge', 10, 5, false],
  ['level with a corner, outside', -3, 10, false],
  ['level with a corner, inside', 5, 9.999, true],
])('inside a square: %s', (_, x, y, inside) => {
  expect(contains(rectangle(0, 0, 10, 10), at(x, y))).toBe(inside);
});

test('what runs along others is taken out, whichever way they run', () => {
  const left = apartFrom(level, [
    segment(4, 5, 2, 5),
    segment(3, 5, 5, 5),
    segment(8, 5, 14, 5),
    segment(0, 4, 10, 4),
    segment(6, 0, 6, 9),
  ]);
  expect(ends(left)).toEqual([
    [0, 2],
    [5, 8],
  ]);
});
