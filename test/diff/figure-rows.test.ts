/* Figures that came out otherwise, as a maker reads them: worked out by hand, an inch being 25.4 mm. */
import { expect, test } from 'vitest';
import type { FigureChange } from '../../src/diff/difference.js';
import { figureRows } from '../../src/diff/figure-rows.js';

const INCH = 25.4;
const inches = { units: 'in', step: INCH / 16 } as const;
const millimetres = { units: 'mm', step: 0.5 } as const;

const figure = (
  name: string,
  before: FigureChange['before'],
  after: FigureChange['after'],
  dimension: FigureChange['dimension'] = 'length',
): FigureChange => ({ name, dimension, before, after });

const row = (change: FigureChange, ruler: Parameters<typeof figureRows>[1] = inches) =>
  figureRows([change], ruler).map(({ words, before, after, difference }) => [
    words,
    before,
    after,
    difference,
  ]);

test('what is laid off with the ruler is read off the ruler, its difference too', () => {
  expect(row(figure('blank', [11.25 * INCH], [11.4375 * INCH]))).toEqual([
    ['blank', '11 1/4 in', '11 7/16 in', '+3/16 in (+4.8 mm)'],
  ]);
  expect(row(figure('seal-mark', [7.1875 * INCH], [7.125 * INCH]))).toEqual([
    ['seal mark', '7 3/16 in', '7 1/8 in', '-1/16 in (-1.6 mm)'],
  ]);
  expect(row(figure('side-mark', [97.5], [104]), millimetres)).toEqual([
    ['side mark', '97.5 mm', '104 mm', '+6.5 mm (+0.26 in)'],
  ]);
});

test('what follows from it is told in decimals', () => {
  expect(row(figure('room-width', [0.2 * INCH], [0.29 * INCH]))).toEqual([
    ['room, card’s width', '0.2 in', '0.29 in', '+0.09 in (+2.3 mm)'],
  ]);
  expect(row(figure('closure', [76.1], [83.4]), millimetres)).toEqual([
    ['closure of the flap', '76.1 mm', '83.4 mm', '+7.3 mm (+0.29 in)'],
  ]);
});

test('counts, masses and areas are told with their difference, each in its unit', () => {
  expect(row(figure('per-sheet', [6], [4], 'count'))).toEqual([['blanks from a sheet', '6', '4', '-2']]);
  // An ounce is 453.59237/16 g.
  expect(row(figure('mass', [10], [12.5], 'mass'), millimetres)).toEqual([
    ['mass', '10 g', '12.5 g', '+2.5 g (+0.09 oz)'],
  ]);
  expect(row(figure('bare', [0], [3.5], 'area'), millimetres)).toEqual([
    ['back left bare', '0 mm²', '3.5 mm²', '+3.5 mm²'],
  ]);
});

test('a row for each side where they differ, but none for a side that stays', () => {
  expect(row(figure('side-mark', [90], [92, 88]), millimetres)).toEqual([
    ['side mark, left', '90 mm', '92 mm', '+2 mm (+0.079 in)'],
    ['side mark, right', '90 mm', '88 mm', '-2 mm (-0.079 in)'],
  ]);
  expect(row(figure('blank', [200], [200, 205]), millimetres)).toEqual([
    ['blank, height', '200 mm', '205 mm', '+5 mm (+0.2 in)'],
  ]);
});

test('no difference where a side has no such figure', () => {
  expect(row(figure('second-seal-mark', [null], [134]), millimetres)).toEqual([
    ['second seal mark', '–', '134 mm', ''],
  ]);
  expect(row(figure('mass', [7], [null], 'mass'), millimetres)).toEqual([['mass', '7 g', '–', '']]);
});

test('left out: what reads alike, and scores beside their marks', () => {
  expect(row(figure('closure', [76.11], [76.12]), millimetres)).toEqual([]);
  expect(row(figure('seal-score', [100], [110]), millimetres)).toEqual([]);
});

test('a difference that the other system’s decimals do not show is told in one system', () => {
  // 0.1 g is 0.0035 oz.
  expect(row(figure('mass', [4.5], [4.6], 'mass'), millimetres)).toEqual([
    ['mass', '4.5 g', '4.6 g', '+0.1 g'],
  ]);
});
