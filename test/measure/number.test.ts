import { expect, test } from 'vitest';
import { printNumber, printShort } from '../../src/measure/number.js';

test('a number has the decimals asked for and no sign on nothing', () => {
  expect(printNumber(12.5, 2)).toBe('12.50');
  expect(printNumber(-0.04, 1)).toBe('0.0');
  expect(printNumber(-0, 0)).toBe('0');
  expect(printNumber(-0.4, 0)).toBe('0');
  expect(printNumber(285.74999999999997, 1)).toBe('285.8');
  expect(printNumber(-1.25, 1)).toBe('-1.3');
});

test('a short number drops the zeros that say nothing', () => {
  expect(printShort(12.5, 3)).toBe('12.5');
  expect(printShort(100, 2)).toBe('100');
  expect(printShort(100, 0)).toBe('100');
  expect(printShort(-0.001, 2)).toBe('0');
});
