/*
 * Whatever the text, resolving it ends with findings, never with an exception; and every envelope that comes out of it
 * can be folded: its lengths are finite and within what the language allows.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Envelope } from '../../src/recipe/recipe.js';
import { resolveText } from '../support/resolve-text.js';

const GOOD = `units in
use "papers.plica"
let hand = 1/16
let base = quarter letter
let marks = 2 * (3 in - 1/4) / 2
paper kraft { title: "Kraft"
  sheet: 12 x 12
  weight: 80 lb text
  caliper: 6 mil
  grain: long
  price: 0.4
  stock: 12 }
style house { ease: 1/4
  seam: 1/2
  step: hand
  paper: kraft
  expect bare = 0 }
envelope quarter like house { title: "Quarter"
  note: "One", "two"
  tags: tides, flat
  card: base
  bulk: 3/16
  contents: 20 g
  depth: 1/4
  corners: notched, notched
  flap: blunt 1/2 rounded 1/8
  expect blank = 8 1/2 +- 1/16 }
envelope marked like quarter { side-mark: 128, 127 mm
  blank: 8 1/4 x 8 1/4
  opens: end
  flap: default
  fasten: tuck }
`;

const FILES = { 'papers.plica': 'units mm\npaper chart { weight: 120 gsm\n  sheet: SRA3 }\nlet five = 5\n' };

const PIECES = [...new Set(GOOD.match(/[a-z-]+|[0-9/]+|"[^"]*"|\S/g))];

const finite = ({ card, face, ease, seam, bulk, depth, step, tape, tolerance, shift }: Envelope): boolean =>
  [
    card.value.width,
    card.value.height,
    face.value.width,
    face.value.height,
    ease.value.width,
    ease.value.height,
    seam.value,
    bulk.value,
    depth.value,
    step.value,
    tape.value,
    tolerance.value,
    shift.value,
  ].every((length) => Number.isFinite(length) && length <= 20_000) && step.value > 0;

const holds = (text: string): void => {
  const { envelopes, diagnostics } = resolveText(text, { files: FILES });
  expect(envelopes.every(finite)).toBe(true);
  for (const { message, primary } of diagnostics) {
    expect(message).not.toMatch(/undefined|NaN|\[object|\.$/);
    expect(primary.span.start).toBeLessThanOrEqual(primary.span.end);
  }
};

test('the good recipe has nothing wrong', () => {
  const { envelopes, diagnostics } = resolveText(GOOD, { files: FILES });
  expect(diagnostics).toEqual([]);
  expect(envelopes.map(({ name }) => name)).toEqual(['quarter', 'marked']);
});

test('a good recipe with any piece cut out is resolved without a throw', () => {
  const at = fc.integer({ min: 0, max: GOOD.length });
  fc.assert(
    fc.property(at, fc.integer({ min: 0, max: 40 }), (start, length) =>
      holds(GOOD.slice(0, start) + GOOD.slice(start + length)),
    ),
    { seed: 6, numRuns: 400 },
  );
});

test('a good recipe with pieces put where others were is resolved without a throw', () => {
  const change = fc.record({ at: fc.nat(200), piece: fc.constantFrom(...PIECES) });
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
      const pieces = GOOD.split(/([a-z-]+|[0-9/]+|"[^"]*")/);
      for (const { at, piece } of changes) pieces[(at * 2 + 1) % pieces.length] = piece;
      holds(pieces.join(''));
    }),
    { seed: 7, numRuns: 400 },
  );
});

test('any text made of its pieces is resolved without a throw', () => {
  const word = fc.oneof(fc.constantFrom(...PIECES), fc.constantFrom(' ', '\n', '# ', '9'.repeat(40)));
  fc.assert(
    fc.property(fc.array(word, { maxLength: 60 }), (words) => holds(words.join(' '))),
    { seed: 8, numRuns: 400 },
  );
});
