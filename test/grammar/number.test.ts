import { expect, test } from 'vitest';
import { readNumber } from '../../grammar/number.js';

test.each([
  ['12', 12],
  ['0', 0],
  ['0.5', 0.5],
  ['.5', 0.5],
  ['05', 5],
  ['1/2', 0.5],
  ['0/4', 0],
  ['5 1/2', 5.5],
  ['5\t 15/16', 5.9375],
  ['½', 0.5],
  ['5½', 5.5],
  ['5 ¾', 5.75],
  ['8⅝', 8.625],
])('%s is %d', (image, value) => {
  expect(readNumber(image)).toBe(value);
});

test.each([
  ['51/2', ['25 1/2', '5 1/2']],
  ['115/16', ['7 3/16', '11 5/16', '1 15/16']],
  ['81/2', ['40 1/2', '8 1/2']],
  ['3/2', ['1 1/2']],
  ['4/4', ['1']],
  ['5 3/2', ['6 1/2']],
  ['5-1/2', ['5 1/2', '5 - 1/2']],
  ['8-5', []],
  ['5,5', ['5.5', '5, 5']],
  ['1,000', ['1000', '1, 000']],
  ['128,127,5', ['128, 127, 5']],
  ['12.', ['12']],
  ['1/4/2', ['1 / 4 / 2']],
  ['1.5/2', ['1.5 / 2']],
  ['5⁄8', ['5/8']],
  ['5–1/2', ['5 1/2', '5 - 1/2']],
  ['1e3', ['1000']],
  ['1/0', []],
  ['1.2.3', []],
  ['½½', []],
  ['5.5 1/2', []],
])('%s is refused, with the readings %j', (image, readings) => {
  expect(readNumber(image)).toMatchObject({ readings });
});

test('why 51/2 is refused is said in numbers', () => {
  expect(readNumber('51/2')).toMatchObject({ why: 'a fraction is less than one, and 51/2 is 25.5' });
});

test('digits without end are refused, not infinite', () => {
  expect(readNumber('9'.repeat(400))).toMatchObject({ wrong: 'has too many digits' });
});
