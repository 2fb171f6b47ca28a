/* Stretches of a slanted line that others run along. */
import { expect, test } from 'vitest';
import { apartFrom } from '../../src/plane/apart-from.js';

/** A point on a line of 3 : 4 through (10, 20), so far along it. */
const on = (along: number) => ({ x: 10 + 0.6 * along, y: 20 + 0.8 * along });
const stretch = (from: number, to: number) => ({ from: on(from), to: on(to) });
const LINE = stretch(0, 100);

const left = (...others: readonly (readonly [number, number])[]) =>
  apartFrom(
    LINE,
    others.map(([from, to]) => stretch(from, to)),
  ).map(({ from, to }) => [(from.x - 10) / 0.6, (to.y - 20) / 0.8]);

const near = (pairs: readonly (readonly [number, number])[]) =>
  pairs.map((pair) => pair.map((value) => expect.closeTo(value, 6)));

test.each([
  ['nothing', [], [[0, 100]]],
  [
    'one in the middle',
    [[40, 60]],
    [
      [0, 40],
      [60, 100],
    ],
  ],
  [
    'one that runs the other way',
    [[60, 40]],
    [
      [0, 40],
      [60, 100],
    ],
  ],
  [
    'two, the further one given first',
    [
      [70, 80],
      [20, 30],
    ],
    [
      [0, 20],
      [30, 70],
      [80, 100],
    ],
  ],
  [
    'three in no order',
    [
      [40, 50],
      [80, 90],
      [10, 20],
    ],
    [
      [0, 10],
      [20, 40],
      [50, 80],
      [90, 100],
    ],
  ],
  [
    'two that overlap',
    [
      [20, 60],
      [40, 70],
    ],
    [
      [0, 20],
      [70, 100],
    ],
  ],
  [
    'one within another',
    [
      [20, 70],
      [30, 40],
    ],
    [
      [0, 20],
      [70, 100],
    ],
  ],
  ['one that begins before it', [[-50, 30]], [[30, 100]]],
  ['one that reaches past it', [[80, 150]], [[0, 80]]],
  ['one as long as itself', [[0, 100]], []],
  ['one that begins where it ends', [[100, 120]], [[0, 100]]],
] as const)('beside %s', (_, others, expected) => {
  expect(left(...others)).toEqual(near(expected));
});

test('what only meets the line with one end does not run along it', () => {
  const aside = { from: on(40), to: { x: on(60).x + 5, y: on(60).y } };
  expect(apartFrom(LINE, [aside])).toEqual([LINE]);
  expect(apartFrom(LINE, [{ from: aside.to, to: aside.from }])).toEqual([LINE]);
});

test('a parallel line runs along it only within a ten-thousandth', () => {
  const beside = (off: number) => {
    const moved = (along: number) => ({ x: on(along).x + 0.8 * off, y: on(along).y - 0.6 * off });
    return { from: moved(40), to: moved(60) };
  };
  expect(apartFrom(LINE, [beside(0.5e-4)])).toHaveLength(2);
  expect(apartFrom(LINE, [beside(2e-4)])).toEqual([LINE]);
});

test('a line without length has no stretches', () => {
  expect(apartFrom(stretch(5, 5), [])).toEqual([]);
  expect(apartFrom(stretch(5, 5), [LINE])).toEqual([]);
});
