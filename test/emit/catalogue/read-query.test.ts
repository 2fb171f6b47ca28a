import { expect, test } from 'vitest';
import { readQuery } from '../../../src/emit/catalogue/html/read-query.js';
import { sizeNamed, sizeNames } from '../../../src/stock/sizes.js';

const SIZES = Object.fromEntries(
  [...sizeNames()].map((name) => {
    const { short = 0, long = 0 } = sizeNamed(name) ?? {};
    return [name.toLowerCase(), [short, long] as const];
  }),
);
const read = (typed: string, units = 'in') => readQuery(typed, SIZES, units);

/** What is typed, and the sides that are meant in mm. ISO 216, and inches of 25.4 mm. */
const CARDS: readonly (readonly [typed: string, width: number, height: number])[] = [
  ['5x7 in', 127, 177.8],
  ['5 x 7 in', 127, 177.8],
  ['5 x 7', 127, 177.8],
  ['5in x 7in', 127, 177.8],
  ['5" x 7"', 127, 177.8],
  ['5 1/2 x 8 1/2"', 139.7, 215.9],
  ['5-1/2 x 8-1/2 in', 139.7, 215.9],
  ['5½ × 8½', 139.7, 215.9],
  ['4¼ by 5½ inches', 107.95, 139.7],
  ['148 x 105 mm', 148, 105],
  ['148x105mm', 148, 105],
  ['14.8 x 10,5 cm', 148, 105],
  ['A6', 105, 148],
  ['a card A6, please', 105, 148],
  ['us-a2', 107.95, 139.7],
  ['half letter', 139.7, 215.9],
  ['quarter letter', 107.95, 139.7],
  ['third a4', 99, 210],
];

test.each(CARDS)('%s', (typed, width, height) => {
  const { card } = read(typed);
  const sides = [card?.width ?? 0, card?.height ?? 0].sort((a, b) => a - b);
  expect(sides[0]).toBeCloseTo(Math.min(width, height), 6);
  expect(sides[1]).toBeCloseTo(Math.max(width, height), 6);
});

test('a bare size goes by the units of the book', () => {
  expect(read('148 x 105', 'mm').card).toEqual({ width: 148, height: 105 });
});

test.each([
  ['up to 4 mm thick', 4],
  ['4 mm thick', 4],
  ['1/4 in thick', 6.35],
  ['5 x 7 in, up to 4 mm thick', 4],
  ['A6 up to 1/8"', 3.175],
  ['at most 6mm deep', 6],
])('%s', (typed, thick) => {
  expect(read(typed).thick).toBeCloseTo(thick, 6);
});

test('what is no size is looked for as words', () => {
  expect(read('Tide kraft')).toEqual({ card: null, thick: null, words: ['tide', 'kraft'] });
  expect(read('tides 5 x 7 in')).toMatchObject({ words: ['tides'], card: { width: expect.closeTo(127, 6) } });
  expect(read('')).toEqual({ card: null, thick: null, words: [] });
  expect(read('0 x 5').card).toBeNull();
  expect(read('5 x 1/0').card).toBeNull();
});
