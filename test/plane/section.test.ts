/* Upright lines through polygons, and the stretches of them that things have in common. */
import { describe, expect, test } from 'vitest';
import { common, lengthOf, sectionAt, unionLength } from '../../src/plane/section.js';

const at = (x: number, y: number) => ({ x, y });
const KITE = [at(0, 0), at(4, -3), at(8, 0), at(4, 9)];

describe('where an upright line meets a polygon', () => {
  test.each([
    ['between its corners', 2, { from: -1.5, to: 4.5 }],
    ['through two corners', 4, { from: -3, to: 9 }],
    ['beyond the middle', 6, { from: -1.5, to: 4.5 }],
    ['through its first corner alone', 0, { from: 0, to: 0 }],
    ['through its last corner alone', 8, { from: 0, to: 0 }],
    ['before it', -0.1, null],
    ['past it', 8.1, null],
  ])('%s', (_, x, expected) => {
    expect(sectionAt(KITE, x)).toEqual(expected);
  });

  test('along an edge it is the whole edge', () => {
    const square = [at(1, 1), at(3, 1), at(3, 4), at(1, 4)];
    expect(sectionAt(square, 3)).toEqual({ from: 1, to: 4 });
    expect(sectionAt(square, 1)).toEqual({ from: 1, to: 4 });
  });
});

describe('stretches', () => {
  const one = { from: 2, to: 7 };

  test.each([
    ['that overlap', { from: 5, to: 9 }, { from: 5, to: 7 }, 7],
    ['within each other', { from: 3, to: 4 }, { from: 3, to: 4 }, 5],
    ['that touch', { from: 7, to: 9 }, null, 7],
    ['apart', { from: 8, to: 9 }, null, 6],
    ['of which one is nothing', null, null, 5],
  ])('%s', (_, other, shared, covered) => {
    expect(common(one, other)).toEqual(shared);
    expect(common(other, one)).toEqual(shared);
    expect(unionLength(one, other)).toBe(covered);
    expect(unionLength(other, one)).toBe(covered);
  });

  test('nothing has no length', () => {
    expect(lengthOf(null)).toBe(0);
    expect(lengthOf(one)).toBe(5);
  });
});
