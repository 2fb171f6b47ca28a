/* Rounded outlines and their arcs, point by point. */
import { describe, expect, test } from 'vitest';
import { flatten, pathArea, roundedPath, type RoundedCorner, sweep } from '../../src/plane/path.js';

const corner = (x: number, y: number, radius = 0): RoundedCorner => ({ x, y, radius });
const at = (x: number, y: number) => ({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) });

describe('the outline of a polygon with rounded corners', () => {
  test('runs by lines to where each arc leaves its edge, and ends where it starts', () => {
    expect(roundedPath([corner(0, 0, 2), corner(10, 0), corner(10, 10, 3), corner(0, 10)])).toEqual({
      start: at(0, 2),
      stretches: [
        { kind: 'arc', to: at(2, 0), centre: at(2, 2), clockwise: false },
        { kind: 'line', to: at(10, 0) },
        { kind: 'line', to: at(10, 7) },
        { kind: 'arc', to: at(7, 10), centre: at(7, 7), clockwise: false },
        { kind: 'line', to: at(0, 10) },
        { kind: 'line', to: at(0, 2) },
      ],
    });
  });

  test('turns clockwise round a corner that points inwards', () => {
    const notched = [
      corner(0, 0),
      corner(10, 0),
      corner(10, 10),
      corner(4, 10),
      corner(4, 6, 1),
      corner(0, 6),
    ];
    expect(roundedPath(notched).stretches[4]).toEqual({
      kind: 'arc',
      to: at(3, 6),
      centre: at(3, 7),
      clockwise: true,
    });
  });

  test('has no arc at a corner that is none', () => {
    const straight = [corner(0, 0), corner(5, 0, 2), corner(10, 0), corner(0, 10)];
    expect(roundedPath(straight).stretches.map(({ kind }) => kind)).toEqual(['line', 'line', 'line', 'line']);
  });

  test('takes the whole of an edge beside a sharp corner, half of one beside a rounded one', () => {
    const wide = (radius: number) => [corner(0, 0, 50), corner(12, 0, radius), corner(12, 30), corner(0, 30)];
    expect(roundedPath(wide(0)).stretches[0]).toMatchObject({ to: at(12, 0), centre: at(12, 12) });
    expect(roundedPath(wide(1)).stretches[0]).toMatchObject({ to: at(6, 0), centre: at(6, 6) });
  });

  test('rounds a slanted corner so that the arc touches both edges', () => {
    // A right angle that stands on its point, edges of 3 : 4; an arc of 5 takes 5 along either.
    const path = roundedPath([corner(0, 0, 5), corner(16, 12), corner(4, 28), corner(-12, 16)]);
    expect(path.start).toEqual(at(-3, 4));
    expect(path.stretches[0]).toEqual({ kind: 'arc', to: at(4, 3), centre: at(1, 7), clockwise: false });
  });
});

test('three corners rounded to the circle within: the circle, and no edges between', () => {
  // Legs of 9 and 12, a long side of 15: the circle within has a radius of 3.
  const triangle = [corner(0, 0, 3), corner(12, 0, 0), corner(0, 9, 0)];
  expect(roundedPath(triangle).stretches[0]).toMatchObject({ to: at(3, 0), centre: at(3, 3) });
  // At the sharper corners the same circle touches further off: 9 and 6 from the corner.
  const [sharp, blunter] = [
    [0, 3, 0],
    [0, 0, 3],
  ].map((radii) => roundedPath(triangle.map(({ x, y }, index) => corner(x, y, radii[index]))));
  expect(sharp?.stretches[0]).toEqual({ kind: 'line', to: at(3, 0) });
  expect(sharp?.stretches[1]).toMatchObject({ to: at(12 - 9 * 0.8, 9 * 0.6), centre: at(3, 3) });
  expect(blunter?.stretches[2]).toMatchObject({ to: at(0, 3), centre: at(3, 3) });
});

test('rounding takes r²·(1 / tan(a/2) − (π − a)/2) off a corner of the angle a', () => {
  // The corner of a triangle with equal sides, 60°: 1/tan 30° = √3, and an arc of 120°.
  const height = 10 * Math.sqrt(3);
  const path = roundedPath([corner(0, 0, 2), corner(20, 0), corner(10, height)]);
  expect(pathArea(path)).toBeCloseTo(10 * height - 4 * (Math.sqrt(3) - Math.PI / 3), 9);
});

describe('how far an arc turns', () => {
  const arc = (to: { x: number; y: number }, clockwise: boolean) =>
    ({ kind: 'arc', to, centre: { x: 1, y: 2 }, clockwise }) as const;
  const east = { x: 4, y: 2 };
  const north = { x: 1, y: 5 };

  test.each([
    ['a quarter counter-clockwise', east, arc(north, false), Math.PI / 2],
    ['three quarters clockwise to the same end', east, arc(north, true), (-3 * Math.PI) / 2],
    ['a quarter clockwise', north, arc(east, true), -Math.PI / 2],
    ['three quarters counter-clockwise', north, arc(east, false), (3 * Math.PI) / 2],
  ])('%s', (_, from, stretch, expected) => {
    expect(sweep(from, stretch)).toBeCloseTo(expected, 12);
  });
});

describe('a flattened outline', () => {
  const ROUND = roundedPath([corner(0, 0, 10), corner(40, 0), corner(40, 40), corner(0, 40)]);

  test('starts at the path’s start and does not repeat it', () => {
    const flat = flatten(ROUND);
    expect(flat[0]).toEqual(ROUND.start);
    expect(flat.at(-1)).toEqual({ x: 0, y: 40 });
  });

  test('has as few chords as keep to the flatness asked for, an even number', () => {
    // A chord of an arc of 10 stands off by 10·(1 − cos(half its angle)): with four in 90° by 0.19, with two by 0.76.
    const chords = (flatness: number): number => flatten(ROUND, flatness).length - 4;
    expect(chords(0.77)).toBe(2);
    expect(chords(0.75)).toBe(4);
    expect(chords(0.2)).toBe(4);
    expect(chords(0.19)).toBe(6);
    expect(chords(100)).toBe(2);
  });

  test('has its corners on the arc, the same way apart', () => {
    const [first, second, third] = flatten(ROUND, 0.77);
    expect(first).toEqual(at(0, 10));
    expect(second).toEqual(at(10 - 10 / Math.SQRT2, 10 - 10 / Math.SQRT2));
    expect(third).toEqual(at(10, 0));
  });
});

test('the area of an outline with an arc that turns inwards takes its segment off', () => {
  // A square of 4 with half a disc of radius 2 taken out of its upper side.
  const bitten = {
    start: { x: 0, y: 0 },
    stretches: [
      { kind: 'line', to: { x: 4, y: 0 } },
      { kind: 'line', to: { x: 4, y: 4 } },
      { kind: 'arc', to: { x: 0, y: 4 }, centre: { x: 2, y: 4 }, clockwise: true },
      { kind: 'line', to: { x: 0, y: 0 } },
    ],
  } as const;
  expect(pathArea(bitten)).toBeCloseTo(16 - 2 * Math.PI, 9);
});
