import { expect, test } from 'vitest';
import { clip, clipSegment } from '../../src/plane/clip.js';
import { flatten, pathArea, roundedPath, type RoundedCorner } from '../../src/plane/path.js';
import { area, tidy } from '../../src/plane/polygon.js';
import { sectionAt } from '../../src/plane/section.js';

const corner = (x: number, y: number, radius = 0): RoundedCorner => ({ x, y, radius });
const SQUARE = [corner(0, 0), corner(10, 0), corner(10, 10), corner(0, 10)];

test('rounding a right-angled corner takes r²(1 − π/4)', () => {
  const path = roundedPath([corner(0, 0, 2), ...SQUARE.slice(1)]);
  expect(pathArea(path)).toBeCloseTo(100 - 4 * (1 - Math.PI / 4), 9);
});

test('four corners rounded to half the side make a circle', () => {
  const path = roundedPath(SQUARE.map(({ x, y }) => corner(x, y, 5)));
  expect(pathArea(path)).toBeCloseTo(Math.PI * 25, 9);
});

test('rounding a corner that turns inwards adds paper', () => {
  const notched = [corner(0, 0), corner(10, 0), corner(10, 10), corner(5, 10), corner(5, 5, 1), corner(0, 5)];
  expect(pathArea(roundedPath(notched))).toBeCloseTo(75 + (1 - Math.PI / 4), 9);
});

test('a radius that its edges cannot hold is made smaller', () => {
  expect(pathArea(roundedPath(SQUARE.map(({ x, y }) => corner(x, y, 50))))).toBeCloseTo(Math.PI * 25, 9);
});

test('a flattened arc stays within a hundredth and keeps its middle', () => {
  const flat = flatten(roundedPath([corner(0, 0, 10), corner(40, 0), corner(40, 40), corner(0, 40)]));
  const onArc = flat.filter(({ x, y }) => x < 10 && y < 10);
  for (const { x, y } of onArc) expect(Math.hypot(x - 10, y - 10)).toBeCloseTo(10, 9);
  const middle = 10 - 10 / Math.SQRT2;
  expect(onArc.some(({ x, y }) => Math.hypot(x - middle, y - middle) < 1e-9)).toBe(true);
  expect(Math.abs(area(flat) - (1600 - 100 * (1 - Math.PI / 4)))).toBeLessThan(0.01 * 16);
});

test('a polygon cut along a line keeps what lies inside', () => {
  expect(area(clip(SQUARE, [{ a: 1, b: 0, c: 4 }]))).toBeCloseTo(40, 9);
  expect(clip(SQUARE, [{ a: 1, b: 0, c: -1 }])).toEqual([]);
});

test('a segment is cut where it leaves, or is gone', () => {
  const line = { from: { x: -5, y: 2 }, to: { x: 15, y: 2 } };
  const inside = [
    { a: -1, b: 0, c: 0 },
    { a: 1, b: 0, c: 10 },
  ];
  expect(clipSegment(line, inside)).toEqual({ from: { x: 0, y: 2 }, to: { x: 10, y: 2 } });
  expect(clipSegment(line, [{ a: 0, b: 1, c: 1 }])).toBeNull();
});

test('spikes, repeats and straight corners are dropped', () => {
  const messy = [
    { x: 0, y: 0 },
    { x: 5, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 10 },
    { x: 10, y: 15 },
    { x: 10, y: 10 },
    { x: 0, y: 10 },
    { x: 0, y: 10 },
  ];
  expect(tidy(messy)).toEqual([
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 10 },
    { x: 0, y: 10 },
  ]);
});

test('an upright line meets a triangle between its edges', () => {
  const triangle = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 5, y: 5 },
  ];
  expect(sectionAt(triangle, 5)).toEqual({ from: 0, to: 5 });
  expect(sectionAt(triangle, 11)).toBeNull();
});
