import { expect, test } from 'vitest';
import { nearest } from '../../src/text/nearest.js';

const properties = [
  'card',
  'bulk',
  'depth',
  'ease',
  'seam',
  'sides',
  'side-mark',
  'seal-mark',
  'flap',
  'corners',
];

test.each([
  ['crad', ['card']],
  ['dept', ['depth']],
  ['seem', ['seam']],
  ['Flap', ['flap']],
  ['corner', ['corners']],
  ['seal-mrak', ['seal-mark']],
  ['gusset', []],
  ['', []],
])('%s may have been meant as %j', (word, expected) => {
  expect(nearest(word, properties)).toEqual(expected);
});

test('a word left unfinished finds what begins with it', () => {
  expect(nearest('side', properties)).toEqual(['sides', 'side-mark']);
});

test('no more than three are offered, nearest first', () => {
  expect(nearest('tide', ['ride', 'tide-a', 'side', 'tile', 'wide'])).toEqual(['ride', 'side', 'tile']);
});

test('a very long word costs nothing much', () => {
  expect(nearest('x'.repeat(100_000), properties)).toEqual([]);
});
