/* Polygons by hand: which way round, how large, and what of them is noise. */
import { expect, test } from 'vitest';
import { area, bounds, counterClockwise, edgesOf, tidy } from '../../src/plane/polygon.js';

const at = (x: number, y: number) => ({ x, y });
const TRIANGLE = [at(1, 2), at(5, 2), at(1, 5)];

test('an area has a sign: positive counter-clockwise', () => {
  expect(area(TRIANGLE)).toBe(6);
  expect(area([...TRIANGLE].reverse())).toBe(-6);
  expect(area([])).toBe(0);
});

test('turned counter-clockwise, a polygon keeps its corners', () => {
  expect(counterClockwise(TRIANGLE)).toBe(TRIANGLE);
  expect(counterClockwise([...TRIANGLE].reverse())).toEqual(TRIANGLE);
});

test('the last edge leads back to the first corner', () => {
  expect(edgesOf(TRIANGLE)).toEqual([
    { from: at(1, 2), to: at(5, 2) },
    { from: at(5, 2), to: at(1, 5) },
    { from: at(1, 5), to: at(1, 2) },
  ]);
});

test('the box about points has their least and greatest coordinates; about none it is empty', () => {
  expect(bounds([at(3, -2), at(-1, 7), at(2, 0)])).toEqual({ min: at(-1, -2), max: at(3, 7) });
  expect(bounds([])).toEqual({ min: at(0, 0), max: at(0, 0) });
});

test('what bounds nothing once it is tidy is nothing', () => {
  expect(tidy([at(0, 0), at(10, 0)])).toEqual([]);
  expect(tidy([at(0, 0), at(10, 0), at(5, 0)])).toEqual([]);
  expect(tidy([at(3, 3), at(3, 3), at(3, 3)])).toEqual([]);
});

test('noise is told from corners by how far it stands off, not by how long the edges are', () => {
  const bent = [at(0, 0), at(500, -1e-6), at(1000, 0), at(500, 800)];
  expect(tidy(bent)).toEqual(bent);
  expect(tidy([at(0, 0), at(500, -1e-11), at(1000, 0), at(500, 800)])).toEqual([
    at(0, 0),
    at(1000, 0),
    at(500, 800),
  ]);
});

test('a spike is dropped wherever the list of corners begins', () => {
  const spiked = [at(0, 0), at(20, 0), at(10, 0), at(10, 10), at(0, 10)];
  for (const index of spiked.keys()) {
    const left = tidy([...spiked.slice(index), ...spiked.slice(0, index)]);
    expect(left).toHaveLength(4);
    expect(area(left)).toBe(100);
  }
});

test('a point that noise doubled is dropped, even beside a long edge', () => {
  const square = [at(0, 0), at(1000, 0), at(1000, 1000), at(0, 1000)];
  expect(tidy([at(0, 0), at(1000, 0), at(1000, 1e-10), at(1000, 1000), at(0, 1000)])).toHaveLength(4);
  expect(tidy(square)).toEqual(square);
});
