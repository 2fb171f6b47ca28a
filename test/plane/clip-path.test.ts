import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clip, type HalfPlane } from '../../src/plane/clip.js';
import { clipPath } from '../../src/plane/clip-path.js';
import { flatten, type Path, pathArea, roundedPath } from '../../src/plane/path.js';
import { area } from '../../src/plane/polygon.js';

const SQUARE = [
  { x: 0, y: 0 },
  { x: 10, y: 0 },
  { x: 10, y: 10 },
  { x: 0, y: 10 },
];

/** A square of 10 with these radii at its corners, counter-clockwise from the origin. */
const rounded = (...radii: readonly number[]): Path =>
  roundedPath(SQUARE.map((at, index) => ({ ...at, radius: radii[index] ?? 0 })));

const CIRCLE = rounded(5, 5, 5, 5);
const kinds = (path: Path | null): readonly string[] => path?.stretches.map(({ kind }) => kind) ?? [];

test('a half-plane that holds the whole outline leaves it as it is', () => {
  const whole = rounded(2, 0, 3, 0);
  expect(clipPath(whole, [{ a: 1, b: 0, c: 11 }])).toEqual(whole);
  expect(clipPath(whole, [{ a: 1, b: 0, c: 10 }])).toEqual(whole);
});

test('one that holds nothing of it leaves nothing', () => {
  expect(clipPath(CIRCLE, [{ a: 1, b: 0, c: -0.1 }])).toBeNull();
  expect(clipPath(CIRCLE, [{ a: 1, b: 0, c: 0 }])).toBeNull();
});

test('half a circle is half its area: an arc cut in two stays an arc', () => {
  const half = clipPath(CIRCLE, [{ a: 1, b: 0, c: 5 }]);
  expect(half && pathArea(half)).toBeCloseTo((Math.PI * 25) / 2, 9);
  expect(kinds(half).filter((kind) => kind === 'line')).toHaveLength(1);
  const slanted = clipPath(CIRCLE, [{ a: 3, b: 4, c: 35 }]);
  expect(slanted && pathArea(slanted)).toBeCloseTo((Math.PI * 25) / 2, 9);
});

test('a cut across one arc takes the segment beyond it', () => {
  // A segment 2 high of a circle of 5: 25·acos(3/5) − 3·4, by the textbook.
  const cut = clipPath(CIRCLE, [{ a: 0, b: 1, c: 8 }]);
  expect(cut && pathArea(cut)).toBeCloseTo(Math.PI * 25 - (25 * Math.acos(3 / 5) - 12), 9);
  // And one within a single arc, square to its middle: the same segment.
  const corner = clipPath(CIRCLE, [{ a: 1, b: 1, c: 10 + 3 * Math.SQRT2 }]);
  expect(corner && pathArea(corner)).toBeCloseTo(Math.PI * 25 - (25 * Math.acos(3 / 5) - 12), 9);
});

test('arcs keep their centres, and lines meet them where they end', () => {
  const cut = clipPath(rounded(0, 0, 6, 0), [{ a: 0, b: 1, c: 9 }]);
  const arc = cut?.stretches.find(({ kind }) => kind === 'arc');
  expect(arc).toMatchObject({ centre: { x: expect.closeTo(4, 9), y: expect.closeTo(4, 9) } });
  // 5 above the centre of an arc of 6: √(36 − 25) beside it.
  expect(arc?.to).toMatchObject({ x: expect.closeTo(4 + Math.sqrt(11), 9), y: expect.closeTo(9, 9) });
});

test('a bulge that crosses a cut twice loses what lies between', () => {
  // The arc of 5 about (5, 5) from (10, 5) to (5, 10) is cut off between its crossings with the slanted line.
  const cut = clipPath(rounded(0, 0, 5, 0), [{ a: 1, b: 1, c: 10 + 4 * Math.SQRT2 }]);
  expect(kinds(cut)).toEqual(['line', 'line', 'arc', 'line', 'arc', 'line', 'line']);
  // A segment of the angle 2·acos(4/5) of a circle of 5 lies beyond: 25·acos(4/5) − 3·4.
  const square = 100 - 25 * (1 - Math.PI / 4);
  expect(cut && pathArea(cut)).toBeCloseTo(square - (25 * Math.acos(4 / 5) - 12), 9);
});

test('a cut that only touches takes nothing, or all', () => {
  const touched = clipPath(CIRCLE, [{ a: 0, b: -1, c: 0 }]);
  expect(touched && pathArea(touched)).toBeCloseTo(25 * Math.PI, 9);
  expect(clipPath(rounded(), [{ a: 0, b: 1, c: 0 }])).toBeNull();
});

test('what is left is as large as of the polygon, flattened', () => {
  const halfPlane = fc
    .record({
      angle: fc.double({ min: 0, max: 6.3, noNaN: true }),
      off: fc.double({ min: -4, max: 6, noNaN: true }),
    })
    .map(({ angle, off }): HalfPlane => {
      const [a, b] = [Math.cos(angle), Math.sin(angle)];
      return { a: 2 * a, b: 2 * b, c: 2 * (5 * a + 5 * b + off) };
    });
  const radii = fc.array(fc.double({ min: 0, max: 5, noNaN: true }), { minLength: 4, maxLength: 4 });
  fc.assert(
    fc.property(radii, fc.array(halfPlane, { minLength: 1, maxLength: 4 }), (corners, halfPlanes) => {
      const path = rounded(...corners);
      const left = clipPath(path, halfPlanes);
      const flat = area(clip(flatten(path), halfPlanes));
      // A chord lies within 0.01 of its arc, over 30 of arcs at most.
      expect(Math.abs((left ? pathArea(left) : 0) - flat)).toBeLessThan(0.3);
    }),
    { seed: 3, numRuns: 1000 },
  );
});
