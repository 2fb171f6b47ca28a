import { expect, test } from 'vitest';
import { readMass } from '../../src/measure/mass.js';

test('a mass is told in both systems, the file’s own first', () => {
  // An ounce is 453.59237 / 16 = 28.349523 g.
  expect(readMass(28.349523, 'in')).toEqual({ read: '1.00 oz', other: '28.3 g' });
  expect(readMass(14, 'mm')).toEqual({ read: '14 g', other: '0.49 oz' });
  expect(readMass(14, 'cm')).toEqual({ read: '14 g', other: '0.49 oz' });
});
