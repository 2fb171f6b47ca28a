import { expect, test } from 'vitest';
import { fits, NEARLY, sameLength } from '../../src/measure/slack.js';

test('two lengths are the same up to numeric noise, itself included', () => {
  expect(sameLength(NEARLY, 0)).toBe(true);
  expect(sameLength(0, NEARLY)).toBe(true);
  expect(sameLength(0, 2 * NEARLY)).toBe(false);
});

test('a card fits a face of its own size, and one that noise makes larger', () => {
  expect(fits(140, 140)).toBe(true);
  expect(fits(NEARLY, 0)).toBe(true);
  expect(fits(2 * NEARLY, 0)).toBe(false);
  expect(fits(139, 140)).toBe(true);
  expect(fits(140.01, 140)).toBe(false);
});
