import { expect, test } from 'vitest';
import { readSizes } from '../../src/measure/read-sizes.js';

test('width and height are read with the unit said once, the other system beside', () => {
  expect(readSizes({ width: 222.25, height: 146.05 }, { units: 'in', step: 25.4 / 16 })).toBe(
    '8 3/4 × 5 3/4 in (222.3 × 146.1 mm)',
  );
  expect(readSizes({ width: 222, height: 145.5 }, { units: 'mm', step: 0.5 })).toBe(
    '222 × 145.5 mm (8.74 × 5.73 in)',
  );
});
