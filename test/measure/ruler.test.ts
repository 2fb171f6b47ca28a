import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  ceilToStep,
  exactLength,
  floorToStep,
  otherLength,
  readDifference,
  readLength,
  roundToStep,
} from '../../src/measure/ruler.js';

/** The international inch (1959), exactly. */
const INCH = 25.4;
const sixteenths = { units: 'in', step: INCH / 16 } as const;
const halfMillimetres = { units: 'mm', step: 0.5 } as const;

describe('rounding to a graduation', () => {
  // 12/√2 = 8.485281 in: to the nearest 1/16, 1/32, 1/64 and half mm by arithmetic on paper.
  test.each([
    [INCH / 16, 8.5 * INCH],
    [INCH / 32, 8.5 * INCH],
    [INCH / 64, (8 + 31 / 64) * INCH],
    [0.5, 215.5],
  ])('12/√2 in to a step of %f mm', (step, expected) => {
    expect(roundToStep((12 / Math.SQRT2) * INCH, step)).toBeCloseTo(expected, 9);
  });

  test('midway it takes the even graduation (NIST Handbook 44, section 10.3)', () => {
    expect(roundToStep(0.25, 0.5)).toBe(0);
    expect(roundToStep(0.75, 0.5)).toBe(1);
    expect(roundToStep(1.25, 0.5)).toBe(1);
    expect(roundToStep(-0.25, 0.5)).toBe(0);
    expect(roundToStep(-0.75, 0.5)).toBe(-1);
  });

  test('noise does not decide a tie', () => {
    expect(roundToStep(0.25 + 1e-12, 0.5)).toBe(0);
    expect(roundToStep(0.75 - 1e-12, 0.5)).toBe(1);
    expect(roundToStep(3 * (INCH / 32), INCH / 16)).toBeCloseTo(2 * (INCH / 16), 12);
  });

  test('upwards, a graduation stays itself', () => {
    expect(ceilToStep(6, 0.5)).toBe(6);
    expect(ceilToStep(0.1 + 0.2, 0.1)).toBeCloseTo(0.3, 12);
    expect(ceilToStep(6.01, 0.5)).toBe(6.5);
    expect(ceilToStep(-0.2, 0.5)).toBe(0);
  });

  test('downwards, a graduation stays itself', () => {
    expect(floorToStep(6, 0.5)).toBe(6);
    expect(floorToStep(0.3, 0.1)).toBeCloseTo(0.3, 12);
    expect(floorToStep(6.49, 0.5)).toBe(6);
    expect(floorToStep(0.2, 0.5)).toBe(0);
    expect(floorToStep(-0.2, 0.5)).toBe(-0.5);
  });

  test('noise grows with the length that it comes from', () => {
    expect(roundToStep((1e5 + 0.5 + 2e-5) * 0.5, 0.5)).toBe(5e4);
    expect(ceilToStep((1e5 + 2e-5) * 0.5, 0.5)).toBe(5e4);
  });

  test('nothing has no sign', () => {
    for (const round of [roundToStep, ceilToStep]) expect(round(-0.1, 0.5)).toBe(0);
    expect(floorToStep(0.1, 0.5)).toBe(0);
  });

  test('never further off than half a step, never below when rounding up', () => {
    const lengths = fc.double({ min: -5000, max: 5000, noNaN: true });
    const steps = fc.constantFrom(0.1, 0.5, 1, INCH / 64, INCH / 16);
    fc.assert(
      fc.property(lengths, steps, (mm, step) => {
        expect(Math.abs(roundToStep(mm, step) - mm)).toBeLessThanOrEqual(step / 2 + 1e-5);
        const up = ceilToStep(mm, step);
        expect(up).toBeGreaterThanOrEqual(mm - 1e-5);
        expect(up - mm).toBeLessThan(step);
      }),
      { seed: 1 },
    );
  });
});

describe('reading a ruler', () => {
  test.each([
    [11.25, '11 1/4 in'],
    [0.75, '3/4 in'],
    [11 + 1 / 64, '11 1/64 in'],
    [8.7504, '8 3/4 in'],
    [12 / Math.SQRT2, '8 1/2 in'],
    [15.999, '16 in'],
    [0, '0 in'],
    [0.001, '0 in'],
    [-0.001, '0 in'],
    [-0.25, '-1/4 in'],
    [-1.25, '-1 1/4 in'],
  ])('%f in at 1/16 in', (inches, expected) => {
    expect(readLength(inches * INCH, sixteenths)).toBe(expected);
  });

  test('a step that no inch ruler has is read in decimals', () => {
    expect(readLength(285.6, { units: 'in', step: 0.5 })).toBe('11.24 in');
    expect(readLength(2.61, { units: 'in', step: 2.54 })).toBe('0.1 in');
    // 284.5 / 25.4 = 11.20079
    expect(readLength(284.6, { units: 'in', step: 0.5 })).toBe('11.201 in');
  });

  test.each([
    [285.5, '285.5 mm'],
    [286, '286 mm'],
    [285.3, '285.3 mm'],
    [285.6789, '285.5 mm'],
    [0, '0 mm'],
    [-6.4, '-6.4 mm'],
    [-0.001, '0 mm'],
  ])('%f mm at 0.5 mm', (mm, expected) => {
    expect(readLength(mm, halfMillimetres)).toBe(expected);
  });

  test('millimetres are read in hundredths, whatever the step', () => {
    expect(readLength(2.1, { units: 'mm', step: 0.125 })).toBe('2.1 mm');
    expect(readLength(2.126, { units: 'mm', step: 0.125 })).toBe('2.13 mm');
  });

  test('noise below nothing has no sign', () => {
    expect(readLength(-1e-7, sixteenths)).toBe('0 in');
    expect(readLength(-1e-7, halfMillimetres)).toBe('0 mm');
  });

  test('in centimetres', () => {
    expect(readLength(285.5, { units: 'cm', step: 0.5 })).toBe('28.55 cm');
    expect(readLength(280, { units: 'cm', step: 1 })).toBe('28 cm');
    expect(readLength(285.55, { units: 'cm', step: 1 })).toBe('28.555 cm');
    expect(readLength(285.6789, { units: 'cm', step: 0.5 })).toBe('28.55 cm');
  });

  test('the other system stands beside', () => {
    expect(otherLength(285.75, sixteenths)).toBe('285.8 mm');
    expect(otherLength(285.5, halfMillimetres)).toBe('11.24 in');
    expect(otherLength(285.5, { units: 'cm', step: 0.5 })).toBe('11.24 in');
  });

  test('a fraction read is in lowest terms and worth what it says', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 64 * 200 }), (parts) => {
        const text = readLength((parts / 64) * INCH, sixteenths);
        const [, whole = '0', over, under] = /^(?:(\d+) ?)??(?:(\d+)\/(\d+))? in$/.exec(text) ?? [];
        expect(Number(whole) + (over ? Number(over) / Number(under) : 0)).toBe(parts / 64);
        if (over) expect(Number(over) % 2).toBe(1);
      }),
      { seed: 2 },
    );
  });
});

test('a margin is shown in decimals, and only nothing as nothing', () => {
  expect(exactLength(0.6486 * INCH, 'in')).toBe('0.65 in');
  expect(exactLength(-6.4, 'mm')).toBe('-6.4 mm');
  expect(exactLength(0.15, 'mm')).toBe('0.15 mm');
  expect(exactLength(0.006 * INCH, 'in')).toBe('0.006 in');
  expect(exactLength(-0.0004, 'mm')).toBe('-0.0004 mm');
  expect(exactLength(0.005, 'mm')).toBe('0.01 mm');
  expect(exactLength(0, 'in')).toBe('0 in');
  expect(exactLength(-0, 'mm')).toBe('0 mm');
  expect(exactLength(1e-9, 'mm')).toBe('0 mm');
  expect(exactLength(285, 'cm')).toBe('28.5 cm');
});

test('a difference is read off the ruler where it lies on a graduation, else shown in decimals', () => {
  expect(readDifference(0.1875 * INCH, 'in')).toBe('3/16 in');
  expect(readDifference(-INCH / 32, 'in')).toBe('-1/32 in');
  expect(readDifference(0.05 * INCH, 'in')).toBe('0.05 in');
  expect(readDifference(-6.25, 'mm')).toBe('-6.25 mm');
});
