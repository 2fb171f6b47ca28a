/* Lengths and shapes as findings tell them, and as help writes them into a recipe. */
import { describe, expect, test } from 'vitest';
import {
  exact,
  readApart,
  readSize,
  writeCorners,
  writeLength,
  writeShape,
  writeSize,
} from '../../src/rules/words.js';
import { envelope } from '../support/envelopes.js';

const INCH = 25.4;
const mm = envelope({});
const inches = { ...envelope({ step: INCH / 16 }), units: 'in' } as const;

test('a margin is a fraction where an inch ruler has it, or else decimals', () => {
  expect(exact(inches, INCH / 16)).toBe('1/16 in');
  expect(exact(inches, 0.65 * INCH)).toBe('0.65 in');
  expect(exact(mm, 7.25)).toBe('7.3 mm');
});

test('two lengths that the ruler reads alike are told apart in decimals', () => {
  expect(readApart(mm, 100, 101)).toEqual(['100 mm', '101 mm']);
  expect(readApart(inches, 11.26 * INCH, 11.25 * INCH)).toEqual(['11.26 in', '11 1/4 in']);
  expect(readApart(inches, 11.26 * INCH, 11.4 * INCH)).toEqual(['11 1/4 in', '11 3/8 in']);
});

test('a size has its unit once', () => {
  expect(readSize(mm, { width: 210, height: 205.5 })).toBe('210 x 205.5 mm');
  expect(readSize(inches, { width: 11.25 * INCH, height: 8 * INCH })).toBe('11 1/4 x 8 in');
});

describe('written into a recipe', () => {
  test('a length that the units cannot read as it stands is written in millimetres', () => {
    expect(writeLength(inches, 0.75 * INCH)).toBe('3/4 in');
    expect(writeLength(inches, 0.7 * INCH)).toBe('17.78 mm');
    expect(writeLength(mm, 12.5)).toBe('12.5 mm');
    expect(writeLength(mm, 12.3456)).toBe('12.3456 mm');
    expect(writeLength({ ...mm, units: 'cm' }, 12.5)).toBe('1.25 cm');
  });

  test('a size has its unit once, or each its own', () => {
    expect(writeSize(inches, { width: 8.5 * INCH, height: 5.5 * INCH })).toBe('8 1/2 x 5 1/2 in');
    expect(writeSize(inches, { width: 8.5 * INCH, height: 100 })).toBe('8 1/2 in x 100 mm');
    expect(writeSize(mm, { width: 150, height: 100 })).toBe('150 x 100 mm');
  });

  test('a tip is pointed, rounded, or blunt with corners of its own', () => {
    expect(writeShape(mm, { kind: 'pointed' })).toBe('pointed');
    expect(writeShape(mm, { kind: 'rounded', radius: 20 })).toBe('rounded 20 mm');
    expect(writeShape(mm, { kind: 'blunt', cut: 12.5, radius: 0 })).toBe('blunt 12.5 mm');
    expect(writeShape(mm, { kind: 'blunt', cut: 12.5, radius: 3 })).toBe('blunt 12.5 mm rounded 3 mm');
  });

  test('corners that are alike are said once', () => {
    expect(writeCorners({ bottom: 'notched', seal: 'notched' })).toBe('notched');
    expect(writeCorners({ bottom: 'folded', seal: 'notched' })).toBe('folded, notched');
  });
});
