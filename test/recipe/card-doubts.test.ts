import { expect, test } from 'vitest';
import { compileText } from '../support/compile-text.js';

/** What is doubted of a card, and the reading that is offered for it. */
const doubts = (units: string, card: string): readonly (string | null)[] =>
  compileText(`units ${units}\nenvelope tides { card: ${card} }\n`)
    .diagnostics.filter(({ problem }) => problem.name === 'range')
    .map(({ severity, help }) => `${severity}: ${help}`);

test.each([
  ['mm', '8.5 x 5.5', 'in'],
  ['mm', '5 x 7', 'in'],
  ['mm', '8 1/2 x 5 1/2', 'in'],
  ['in', '148 x 105', 'mm'],
  ['in', '60 x 40', 'mm'],
  ['cm', '148 x 105', 'mm'],
])('under `units %s` a card of %s is doubted, and read in %s', (units, card, meant) => {
  expect(doubts(units, card)).toEqual([`warning: did you mean \`card: ${card} ${meant}\`?`]);
});

test('a unit of its own is not read otherwise', () => {
  expect(doubts('mm', '60 in x 40 in')).toEqual([
    'warning: look at its unit, and at the `units` of the file',
  ]);
});

test.each([
  ['mm', '20 x 12'],
  ['mm', '1000 x 700'],
  ['in', '39 x 1'],
  ['cm', 'A2'],
])('under `units %s` a card of %s is none of our business', (units, card) => {
  expect(doubts(units, card)).toEqual([]);
});
