/* Half-planes of a polygon, moved, and what they leave. */
import { describe, expect, test } from 'vitest';
import { clip, clipSegment, halfPlanesOf, movedIn } from '../../src/plane/clip.js';
import { offsetConvex } from '../../src/plane/offset-convex.js';
import { area, bounds } from '../../src/plane/polygon.js';

const at = (x: number, y: number) => ({ x, y });
/** Legs of 3 and 4 and a long side of 5, so that distances come out whole. */
const TRIANGLE = [at(1, 1), at(5, 1), at(1, 4)];
const SQUARE = [at(0, 0), at(10, 0), at(10, 10), at(0, 10)];

test('the half-planes of a polygon keep the polygon and cut off all beyond it', () => {
  const around = [at(-9, -9), at(9, -9), at(9, 9), at(-9, 9)];
  const left = clip(around, halfPlanesOf(TRIANGLE));
  expect(area(left)).toBeCloseTo(6, 9);
  expect(bounds(left)).toEqual({
    min: { x: expect.closeTo(1, 9), y: expect.closeTo(1, 9) },
    max: { x: expect.closeTo(5, 9), y: expect.closeTo(4, 9) },
  });
});

test('a half-plane is measured in the polygon’s own unit: its normal has length 1', () => {
  for (const { a, b } of halfPlanesOf(TRIANGLE)) expect(Math.hypot(a, b)).toBeCloseTo(1, 12);
  expect(halfPlanesOf([at(2, 3), at(2, 3)])).toEqual([
    { a: 0, b: 0, c: 0 },
    { a: 0, b: 0, c: 0 },
  ]);
});

test('moved in, an edge is moved by that length, however its half-plane was written', () => {
  expect(movedIn({ a: 3, b: 4, c: 50 }, 2)).toEqual({ a: 3, b: 4, c: 40 });
  expect(movedIn({ a: 1, b: 0, c: 5 }, -2)).toEqual({ a: 1, b: 0, c: 7 });
});

describe('a convex polygon with its edges moved', () => {
  test('out, keeps its angles: sides grow to the corners', () => {
    expect(bounds(offsetConvex(SQUARE, 2))).toEqual({ min: at(-2, -2), max: at(12, 12) });
    expect(area(offsetConvex(SQUARE, 2))).toBeCloseTo(14 * 14, 9);
    // A triangle about a circle of 1, moved out by 1, lies about one of 2: four times as large.
    expect(area(offsetConvex(TRIANGLE, 1))).toBeCloseTo(24, 9);
  });

  test('in, until nothing is left', () => {
    expect(area(offsetConvex(SQUARE, -2))).toBeCloseTo(36, 9);
    expect(area(offsetConvex(TRIANGLE, -0.5))).toBeCloseTo(1.5, 9);
    expect(offsetConvex(TRIANGLE, -1)).toEqual([]);
    expect(offsetConvex(SQUARE, -6)).toEqual([]);
  });

  test('is counter-clockwise still', () => {
    expect(area(offsetConvex(SQUARE, 0))).toBeCloseTo(100, 9);
  });

  test('of nothing, is nothing', () => {
    expect(offsetConvex([], 1)).toEqual([]);
    expect(offsetConvex([at(0, 0), at(1, 0)], 1)).toEqual([]);
  });

  test('a sliver’s point reaches far out', () => {
    // Edges that meet at an angle of 2·atan(1/10): moved out by 1, their corner moves by 1 / sin(half of it).
    const sliver = [at(0, 0), at(10, -1), at(10, 1)];
    const tip = -Math.hypot(10, 1);
    expect(bounds(offsetConvex(sliver, 1)).min.x).toBeCloseTo(tip, 9);
  });
});

describe('a cut', () => {
  test('through corners takes exactly what lies beyond', () => {
    expect(clip(SQUARE, [{ a: 1, b: 1, c: 10 }])).toEqual([at(0, 0), at(10, 0), at(0, 10)]);
  });

  test('along an edge takes nothing from the polygon, or all of it', () => {
    expect(clip(SQUARE, [{ a: 1, b: 0, c: 10 }])).toEqual(SQUARE);
    expect(clip(SQUARE, [{ a: -1, b: 0, c: -10 }])).toEqual([]);
  });

  test('across a slope meets it where the slope is', () => {
    expect(clip(TRIANGLE, [{ a: 1, b: 0, c: 3 }])).toEqual([at(1, 1), at(3, 1), at(3, 2.5), at(1, 4)]);
    expect(clip(TRIANGLE, [{ a: -1, b: 0, c: -3 }])).toEqual([at(3, 1), at(5, 1), at(3, 2.5)]);
  });

  test('of a segment leaves what lies inside, in the segment’s own sense', () => {
    const line = { from: at(15, 2), to: at(-5, 2) };
    const inside = halfPlanesOf(SQUARE);
    expect(clipSegment(line, inside)).toEqual({ from: at(10, 2), to: at(0, 2) });
    expect(clipSegment({ from: at(2, 2), to: at(3, 3) }, inside)).toEqual({ from: at(2, 2), to: at(3, 3) });
    expect(clipSegment({ from: at(11, 2), to: at(12, 2) }, inside)).toBeNull();
    // Past a corner: it leaves by one edge before it comes in by the other.
    expect(clipSegment({ from: at(8, -3), to: at(13, 2) }, inside)).toBeNull();
  });

  test('of a segment that only touches leaves it where it runs along, and nothing where it ends', () => {
    const along = { from: at(2, 0), to: at(8, 0) };
    expect(clipSegment(along, halfPlanesOf(SQUARE))).toEqual(along);
    expect(clipSegment({ from: at(12, 5), to: at(10, 5) }, halfPlanesOf(SQUARE))).toBeNull();
  });

  test('of a strip leaves the middle line where both of its sides are inside', () => {
    // The slope falls by 3 in 4: what reaches half a unit up meets it 2/3 sooner.
    const slope = halfPlanesOf(TRIANGLE);
    const line = { from: at(-5, 2), to: at(15, 2) };
    expect(clipSegment(line, slope)).toEqual({ from: at(1, 2), to: at(expect.closeTo(11 / 3, 9), 2) });
    expect(clipSegment(line, slope, 0.5)).toEqual({ from: at(1, 2), to: at(expect.closeTo(3, 9), 2) });
    expect(clipSegment(line, slope, 1.01)).toBeNull();
    // Square to an edge it ends at the edge, however broad it is.
    const upright = { from: at(3, 12), to: at(3, -2) };
    expect(clipSegment(upright, halfPlanesOf(SQUARE), 3)).toEqual({ from: at(3, 10), to: at(3, 0) });
    expect(clipSegment(upright, halfPlanesOf(SQUARE), 3.5)).toBeNull();
  });

  test('of a strip without a length is the strip, or nothing', () => {
    const spot = { from: at(5, 5), to: at(5, 5) };
    expect(clipSegment(spot, halfPlanesOf(SQUARE), 1)).toEqual(spot);
    expect(clipSegment({ from: at(11, 5), to: at(11, 5) }, halfPlanesOf(SQUARE), 1)).toBeNull();
  });
});
