import { expect, test } from 'vitest';
import { readArea } from '../../src/measure/area.js';

test('an area is told in the square of the file’s unit: tenths of mm², thousandths of the larger ones', () => {
  expect(readArea(3.46, 'mm')).toBe('3.5 mm²');
  expect(readArea(100, 'cm')).toBe('1 cm²');
  expect(readArea(12.34, 'cm')).toBe('0.123 cm²');
  // 1 in² is 25.4² = 645.16 mm².
  expect(readArea(645.16, 'in')).toBe('1 in²');
  expect(readArea(80, 'in')).toBe('0.124 in²');
});
