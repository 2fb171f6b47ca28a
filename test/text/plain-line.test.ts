import { expect, test } from 'vitest';
import { plainLine } from '../../src/text/plain-line.js';

test.each([
  ['tides, springs & neaps', 'tides, springs & neaps'],
  ['two\nlines\tand\u0000more\u2028still', 'two lines and more still'],
  ['turned \u202Eround\u202C, hid\u200Bden, soft\u00AD', 'turned round, hidden, soft'],
  ['a\u0301', 'á'],
  // XML 1.0, section 2.2: no halves of surrogate pairs, nor these two.
  ['\uD83D \uDC1A \uFFFE\uFFFF', '\uFFFD \uFFFD \uFFFD\uFFFD'],
  ['\u{1F41A} \u6F6E', '\u{1F41A} \u6F6E'],
])('%j is %j', (text, line) => {
  expect(plainLine(text)).toBe(line);
  expect(plainLine(line)).toBe(line);
});
