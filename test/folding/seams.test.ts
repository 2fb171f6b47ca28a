/*
 * Seams as areas, and the tape that makes them. Figures are worked out by hand from the marks, in coordinates along the
 * blank's edges: of a point on the bottom flap, t runs from the bottom corner along the edge towards the right one, q from
 * that edge inwards. Folded, it lies (M − q, M − t) from the corner, with M the mean of the flap's marks; so do the others.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import type { FlapName, Piece } from '../../src/folding/folding.js';
import { measure } from '../../src/folding/measure.js';
import { seams } from '../../src/folding/seams.js';
import { area, type Polygon } from '../../src/plane/polygon.js';
import { intersect, regionArea } from '../../src/plane/region.js';
import type { Envelope } from '../../src/recipe/recipe.js';
import { anyEnvelope } from '../support/arbitraries.js';
import { envelope, HALF_LETTER, QUARTER_LETTER_BOX } from '../support/envelopes.js';

const INCH = 25.4;
const TAPE = 6;

const halfLetter = envelope({ ...HALF_LETTER, tape: TAPE });
const box = envelope({ ...QUARTER_LETTER_BOX, tape: TAPE });

const tape = (of: Envelope) =>
  Object.fromEntries(measure(of, fold(of)).tape.map(({ name, length }) => [name, length]));

test('the strips of the half-letter card', () => {
  const { 'lower-left': left, 'lower-right': right, 'seal-left': seal } = tape(halfLetter);
  // The strip lies 1 mm in. The side flap beneath ends at t = 7 3/16 − 5 1/16 = 2 1/8 in; the side fold passes t = 11 1/4 −
  // 5 1/16 + q, and the strip begins a tape's width from it: at q = 1 mm, t = 6 3/16 in + 1 mm − 6 mm·√2.
  expect(right).toBeCloseTo(4.0625 * INCH + 1 - TAPE * Math.SQRT2, 6);
  expect(left).toBeCloseTo(right as number, 6);
  // On the seal flap from beside the other strip's middle, 1 + 6/2 mm from the edge, to where the bottom flap beneath
  // ends: 2·7 3/16 − 11 1/4 = 3 1/8 in from the corner.
  expect(seal).toBeCloseTo(3.125 * INCH - 4, 6);
});

test('the strips of a box lie on the bottom flap beyond its wall', () => {
  // Walls of 1/4 in are 3/8 in on the edge: second marks 3 13/16 and 4 11/16 in, means 4 and 4 7/8 in. The side flap ends
  // at t = 4 7/8 − 4 = 7/8 in; the side fold passes t = 8 1/4 − 4 3/16 + q.
  const folding = fold(box);
  expect(tape(box)['lower-right']).toBeCloseTo((4.0625 - 0.875) * INCH + 1 - TAPE * Math.SQRT2, 6);
  // The bottom flap begins at its second score, 4 11/16/√2 in from the corner.
  const wallEnds = -(folding.made.diagonal / 2 - (4.6875 * INCH) / Math.SQRT2);
  for (const { from, to } of folding.glue) expect(Math.max(from.y, to.y)).toBeLessThan(wallEnds - TAPE / 2);
});

test('a lower seam is a band as wide as the marks on its edge pass each other', () => {
  // Half-letter: 1 in wide, from t = 2 1/8 in to the folds, which close it in a right angle (t = 6 3/16 + q and 7 3/16 − q):
  // 4 1/16 · 1 + 2 · 1/2 · 1/2 · 1/2 in² = 4 5/16 in².
  const lower = seams(fold(halfLetter)).filter(({ strip }) => strip.on === 'bottom');
  expect(lower).toHaveLength(2);
  for (const { closed, flat } of lower)
    for (const polygon of [closed, flat.on, flat.onto])
      expect(area(polygon)).toBeCloseTo(4.3125 * INCH * INCH, 4);
});

const flapOf = (pieces: readonly Piece[], name: FlapName): Piece =>
  pieces.find(({ kind, flap }) => kind === 'flap' && flap === name) as Piece;

test('a seam is the paper of two closed flaps that lies over each other, and holds its strip', () => {
  fc.assert(
    fc.property(anyEnvelope, (any) => {
      const folding = fold(any);
      const found = seams(folding);
      expect(found.map(({ strip }) => strip)).toEqual(folding.glue);
      for (const { strip, closed, flat } of found) {
        const [on, onto] = [strip.on, strip.onto].map((name) => flapOf(folding.pieces, name));
        // The round end of a notch, which a seam leaves out, is less than 0.75² mm².
        const both = regionArea(intersect([on?.folded as Polygon], [onto?.folded as Polygon]));
        expect(Math.abs(both - area(closed))).toBeLessThan(2 * 0.75 ** 2);
        expect(
          Math.abs(area(flat.on) - regionArea(intersect([flat.on], [on?.flat as Polygon]))),
        ).toBeLessThan(0.1);
        expect(
          Math.abs(area(flat.onto) - regionArea(intersect([flat.onto], [onto?.flat as Polygon]))),
        ).toBeLessThan(0.1);
        const { from, to } = strip;
        for (const end of [from, to]) {
          const about = [
            { x: end.x - 0.5, y: end.y - 0.5 },
            { x: end.x + 0.5, y: end.y - 0.5 },
            { x: end.x + 0.5, y: end.y + 0.5 },
            { x: end.x - 0.5, y: end.y + 0.5 },
          ];
          expect(regionArea(intersect([flat.on], [about]))).toBeGreaterThan(0.25);
        }
      }
    }),
    { seed: 11, numRuns: 150 },
  );
});

test('the strips add up to the tape of one envelope', () => {
  fc.assert(
    fc.property(anyEnvelope, (any) => {
      const { tape: strips, tapeLength } = measure(any, fold(any));
      expect(strips.length).toBeGreaterThan(0);
      expect(strips.reduce((sum, { length }) => sum + length, 0)).toBeCloseTo(tapeLength, 9);
      for (const { width } of strips) expect(width).toBe(any.tape.value);
    }),
    { seed: 12, numRuns: 150 },
  );
});
