import { expect, test } from 'vitest';
import { excerpts } from '../../src/diff/excerpts.js';

test('short texts are shown whole', () => {
  expect(excerpts('"Ebb"', '"Flood"')).toEqual(['"Ebb"', '"Flood"']);
});

test('of long ones, where they differ, in whole words', () => {
  const note = (much: string) =>
    `"Printed on the first dry morning after the equinox; the blue is mixed with a ${much} of black, and left to stand overnight."`;
  expect(excerpts(note('little'), note('lot'))).toEqual([
    '…blue is mixed with a little of black, and left to…',
    '…blue is mixed with a lot of black, and left to…',
  ]);
});

test('the beginning and the end of a text that grew or shrank stay told', () => {
  const long = 'tide '.repeat(30);
  expect(excerpts(long, `${long}ebb`)).toEqual(['…tide tide tide tide ', '…tide tide tide tide ebb']);
});

test('however long what differs is, at most 160 characters of it', () => {
  const [before, after] = excerpts('ebb '.repeat(100_000), 'flood '.repeat(100_000));
  expect([before, after].map((text) => text.length)).toEqual([161, 161]);
  expect(before).toMatch(/^ebb ebb .*…$/);
});

test('no character is cut in two', () => {
  const [before] = excerpts('🌊'.repeat(200), '🌕'.repeat(200));
  expect(before).toMatch(/^🌊+…$/u);
});
