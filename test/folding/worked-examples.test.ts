/*
 * Published statements about a square and a rectangle turned by 45° in it, checked on the folding.
 * The expected figures are the sources', or arithmetic done here from their statements; none comes from the code.
 */
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import { area } from '../../src/plane/polygon.js';
import { envelope } from '../support/envelopes.js';

const INCH = 25.4;
const FINE_RULER = 1e-6;

/** Wraps a card that fills its face, with no seam, by a ruler so fine that rounding plays no part. */
const wrap = (width: number, height: number, depth = 0) =>
  fold(
    envelope({
      face: { width, height },
      seam: 0,
      depth,
      step: FINE_RULER,
      corners: depth > 0 ? { bottom: 'notched', seal: 'notched' } : { bottom: 'folded', seal: 'folded' },
      flap: { kind: 'pointed' },
      bottom: { kind: 'pointed' },
      sides: { kind: 'pointed' },
    }),
  );

// Side of the square about a w × h rectangle turned by 45°: (w + h)/√2.
// imathworks.com, "find the size of inner rectangle rotated 45 degrees within another rectangle".
test.each([
  [7 * INCH, 5 * INCH, 8.485281 * INCH],
  [5.5 * INCH, 4.25 * INCH, 6.894291 * INCH],
  [6 * INCH, 6 * INCH, 8.485281 * INCH],
  [148, 105, 178.898016],
  [210, 148, 253.144228],
])('a face of %d x %d mm just fits a square of %d mm', (width, height, side) => {
  expect(wrap(width, height).made.blank.width).toBeCloseTo(side, 4);
});

test('its blank has the face, and half the squares of its sides, as area', () => {
  // Arithmetic from the same statement: s² = wh + (w² + h²)/2.
  const { pieces } = wrap(148, 105);
  const flaps = pieces.filter(({ kind }) => kind === 'flap').reduce((sum, { flat }) => sum + area(flat), 0);
  expect(flaps).toBeCloseTo((148 ** 2 + 105 ** 2) / 2, 1);
});

test('folded in, the long sides’ flaps overlap by w − h along the centre line', () => {
  expect(wrap(148, 105).closure).toBeCloseTo(148 - 105, 3);
});

// A box of base w × d and height h' wrapped on the diagonal: area ½(w + d + 2h')², so s = (w + d + 2h')/√2.
// centregalilee.com, "how many square inches of paper needed to wrap a box" (16 × 14 × 6 in, area 882).
test.each([
  [16, 14, 6, 29.698485],
  [9, 6, 4.5, 16.970563],
  [7, 5, 0.125, 8.662058],
])('a box of %d x %d x %d in is wrapped by a square of %d in', (width, height, depth, side) => {
  expect(wrap(width * INCH, height * INCH, depth * INCH).made.blank.width / INCH).toBeCloseTo(side, 5);
});

test('a square face without seam is the fold of four corners to the centre', () => {
  // Side L/√2, area L²/2: gobetech.com (in Spanish), kwizzes.com "math puzzle 67" (a 10 cm sheet, 100 to 50 cm²);
  // the folds join the edges' middles: origamiusa.org, "the complete blintz, part 10".
  const folding = wrap(100 / Math.SQRT2, 100 / Math.SQRT2);
  const { made, bare } = folding;
  expect(made.blank.width).toBeCloseTo(100, 5);
  expect(made.face.width * made.face.height).toBeCloseTo(5000, 3);
  expect(made.first.left.alongEdge).toBeCloseTo(50, 5);
  expect(bare).toEqual([]);
  expect(folding.layers).toBe(1);
});

test('the trade’s blanks come out: half-letter card 11 1/4 in, quarter-letter card 8 1/4 in', () => {
  // Common practice, no source: ease 1/4 in, seam 1/2 in, ruler of sixteenths.
  const blank = (width: number, height: number) =>
    fold(
      envelope({
        face: { width: (width + 0.25) * INCH, height: (height + 0.25) * INCH },
        seam: 12.7,
        step: INCH / 16,
      }),
    ).made.blank.width / INCH;
  expect(blank(8.5, 5.5)).toBeCloseTo(11.25, 9);
  expect(blank(5.5, 4.25)).toBeCloseTo(8.25, 9);
});

test('a box 1/4 in deep for the quarter-letter card is made from the same 8 1/4 in blank', () => {
  // Common practice, no source. What is left for the two seams: 8.25 − (5.75 + 4.5 + 0.5)/√2 = 0.6486 in.
  const { made, bare } = fold(
    envelope({
      face: { width: 5.75 * INCH, height: 4.5 * INCH },
      blank: { width: 8.25 * INCH, height: 8.25 * INCH },
      depth: INCH / 4,
      step: INCH / 16,
      corners: { bottom: 'notched', seal: 'notched' },
    }),
  );
  expect(made.blank.width).toBe(8.25 * INCH);
  expect(bare).toEqual([]);
});
