import { expect, test } from 'vitest';
import { G_PER_POUND, isUnits, MM_PER, UNITS } from '../../src/measure/unit.js';

test('units are exact', () => {
  // The international inch and pound (1959 agreement): 25.4 mm and 453.59237 g by definition.
  expect(MM_PER).toEqual({ mm: 1, cm: 10, in: 25.4 });
  expect(G_PER_POUND).toBe(453.59237);
  expect(UNITS.get('mil')?.factor).toBe(0.0254);
  expect(UNITS.get('um')?.factor).toBe(0.001);
  expect(UNITS.get('oz')?.factor).toBeCloseTo(28.349523125, 12);
  expect(UNITS.get('"')).toEqual(UNITS.get('in'));
  expect(UNITS.get('%')).toEqual({ dimension: 'number', factor: 0.01 });
});

test('only mm, cm and in are units of a file', () => {
  expect(['mm', 'cm', 'in'].every(isUnits)).toBe(true);
  expect(['mil', 'inch', '', 'constructor', '__proto__'].some(isUnits)).toBe(false);
});
