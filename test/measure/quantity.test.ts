import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  asDimension,
  calculate,
  type Dimension,
  isRefusal,
  length,
  negate,
  number,
  type Quantity,
} from '../../src/measure/quantity.js';

const of = (dimension: Exclude<Dimension, 'number'>, value: number): Quantity => ({ dimension, value });

describe('a bare number', () => {
  test('is a length in its own file’s units where a length is wanted', () => {
    expect(asDimension(number(2, 'in'), 'length')).toBe(50.8);
    expect(asDimension(number(2, 'cm'), 'length')).toBe(20);
    expect(calculate(number(2, 'in'), '+', length(1))).toEqual(length(51.8));
    expect(calculate(length(1), '-', number(2, 'mm'))).toEqual(length(-1));
  });

  test('stays plain while it multiplies, divides or meets plain numbers', () => {
    expect(calculate(number(2, 'in'), '*', number(3, 'in'))).toEqual(number(6, 'in'));
    expect(calculate(number(2, 'in'), '+', number(3, 'in'))).toEqual(number(5, 'in'));
    expect(calculate(number(2, 'in'), '*', length(3))).toEqual(length(6));
    expect(calculate(number(6, 'in'), '/', number(4, 'in'))).toEqual(number(1.5, 'in'));
    expect(calculate(length(3), '/', number(2, 'in'))).toEqual(length(1.5));
  });

  test('of a file without units is no length, and meets none of another file', () => {
    expect(asDimension(number(2, 'none'), 'length')).toBe('no-units');
    expect(calculate(number(2, 'none'), '+', length(1))).toBe('no-units');
    expect(calculate(number(2, 'in'), '*', number(3, 'mm'))).toBe('other-units');
  });

  test('is no mass, grammage or area: those carry a unit', () => {
    for (const wanted of ['mass', 'grammage', 'area'] as const) {
      expect(asDimension(number(2, 'in'), wanted)).toBe('bare');
    }
  });
});

test('nothing suits any dimension', () => {
  for (const wanted of ['number', 'length', 'mass', 'grammage', 'area'] as const) {
    expect(asDimension(number(0, 'none'), wanted)).toBe(0);
  }
  expect(calculate(number(0, 'mm'), '+', of('mass', 5))).toEqual(of('mass', 5));
});

describe('dimensions', () => {
  test('multiply and divide into each other', () => {
    expect(calculate(length(6), '*', length(2))).toEqual(of('area', 12));
    expect(calculate(of('area', 12), '/', length(2))).toEqual(length(6));
    expect(calculate(length(6), '/', length(2))).toEqual(number(3, 'pure'));
    // A square metre of 120 g/m² weighs 120 g.
    expect(calculate(of('grammage', 120), '*', of('area', 1e6))).toMatchObject({
      dimension: 'mass',
      value: 120,
    });
    const grammage = calculate(of('mass', 120), '/', of('area', 1e6));
    expect(grammage).toMatchObject({ dimension: 'grammage' });
    expect((grammage as Quantity).value).toBeCloseTo(120, 9);
  });

  test('a grammage may stand on either side', () => {
    expect(calculate(of('area', 1e6), '*', of('grammage', 120))).toEqual(of('mass', 120));
    // 120 g of paper that weighs 120 g/m² cover a square metre.
    const area = calculate(of('mass', 120), '/', of('grammage', 120));
    expect(area).toMatchObject({ dimension: 'area' });
    expect((area as Quantity).value).toBeCloseTo(1e6, 3);
  });

  test('that make no sense together are refused', () => {
    expect(calculate(length(1), '+', of('mass', 1))).toBe('unlike');
    expect(calculate(of('area', 1), '*', length(1))).toBe('unlike');
    expect(calculate(number(1, 'mm'), '/', length(1))).toBe('unlike');
    expect(calculate(of('mass', 1), '*', of('mass', 1))).toBe('unlike');
    expect(asDimension(of('mass', 1), 'length')).toBe('unlike');
  });

  test('a ratio is no length, but scales one and joins plain numbers', () => {
    expect(asDimension(number(3, 'pure'), 'length')).toBe('pure');
    expect(calculate(number(3, 'pure'), '*', number(2, 'in'))).toEqual(number(6, 'in'));
    expect(calculate(number(3, 'pure'), '+', length(1))).toBe('pure');
  });

  test('dividing by nothing is refused', () => {
    expect(calculate(length(1), '/', number(0, 'mm'))).toBe('division-by-zero');
    expect(calculate(number(1, 'mm'), '/', number(0, 'mm'))).toBe('division-by-zero');
  });
});

describe('laws', () => {
  const value = fc.double({ min: -1000, max: 1000, noNaN: true });
  const quantity: fc.Arbitrary<Quantity> = fc.oneof(
    fc.record({
      dimension: fc.constantFrom('length', 'area', 'mass', 'grammage' as const),
      value,
    }) as fc.Arbitrary<Quantity>,
    fc
      .record({ value, under: fc.constantFrom('mm', 'cm', 'in', 'none', 'pure' as const) })
      .map(({ value: plain, under }) => number(plain, under as 'mm')),
  );
  const pair = fc.tuple(quantity, quantity);
  const near = (one: Quantity | string, other: Quantity | string): void => {
    if (isRefusal(one) || isRefusal(other)) expect(one).toBe(other);
    else {
      expect({ ...(one as Quantity), value: 0 }).toEqual({ ...(other as Quantity), value: 0 });
      expect((one as Quantity).value).toBeCloseTo((other as Quantity).value, 6);
    }
  };

  test('sums and products do not mind the order', () => {
    fc.assert(
      fc.property(pair, ([one, other]) => {
        near(calculate(one, '*', other), calculate(other, '*', one));
        const sum = calculate(one, '+', other);
        if (!isRefusal(sum)) near(sum, calculate(other, '+', one));
      }),
      { seed: 3 },
    );
  });

  test('taking away is adding the negative, and twice negated is the same', () => {
    fc.assert(
      fc.property(pair, ([one, other]) => {
        near(calculate(one, '-', other), calculate(one, '+', negate(other)));
        expect(negate(negate(one)).value).toBe(one.value + 0);
      }),
      { seed: 4 },
    );
  });

  test('dividing undoes multiplying by a plain number', () => {
    fc.assert(
      fc.property(quantity, fc.double({ min: 0.01, max: 100, noNaN: true }), (one, factor) => {
        const product = calculate(one, '*', number(factor, 'pure'));
        near(calculate(product as Quantity, '/', number(factor, 'pure')), one);
      }),
      { seed: 5 },
    );
  });
});
