/* What became of a blank, as a picture: readable between any two proportions. */
import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { beforeAfter } from '../../src/drawing/before-after.js';
import { beforeAfterSheet } from '../../src/drawing/before-after-sheet.js';
import { segmentsOf } from '../../src/drawing/box.js';
import type { Layer } from '../../src/drawing/drawing.js';
import type { Figure } from '../../src/drawing/figure.js';
import { LINE_KINDS } from '../../src/drawing/line-kinds.js';
import type { TextMeasure } from '../../src/drawing/text-measure.js';
import type { Drawn } from '../../src/drawing/words.js';
import { openDocument } from '../../src/emit/pdf/document.js';
import { fold } from '../../src/folding/fold.js';
import type { Point } from '../../src/plane/point.js';
import { bounds } from '../../src/plane/polygon.js';
import type { Envelope } from '../../src/recipe/recipe.js';
import { anyEnvelope, anyLinedEnvelope, nonsense } from '../support/arbitraries.js';
import { boxOf, collisions, letteringOf } from '../support/collisions.js';
import { envelope } from '../support/envelopes.js';
import { EXTREMES } from '../support/extremes.js';
import { halfLetter } from '../support/jobs.js';
import { emitOptions } from '../support/pdf-pages.js';

let measure: TextMeasure;
beforeAll(async () => {
  measure = (await openDocument(emitOptions(), { title: '' })).measure;
});

/** Pairs of lettering and lines that lie on each other, and whatever lies outside the figure's box. */
function faults({ drawing, width, height }: Figure): readonly unknown[] {
  const points = [
    ...letteringOf(drawing).flatMap((shape) => boxOf(shape, measure)),
    ...drawing.flatMap(({ shape }) => segmentsOf(shape).flatMap(({ from, to }) => [from, to])),
  ];
  const isInside = ({ x, y }: Point): boolean =>
    x >= -1e-9 && x <= width + 1e-9 && y >= -1e-9 && y <= height + 1e-9;
  return [...collisions(drawing, measure), ...points.filter((point) => !isInside(point))];
}

const all = Object.entries(EXTREMES);
const pairs = all.flatMap(([older, before]) =>
  all.map(([newer, after]) => [`${older} → ${newer}`, before, after] as const),
);

test.each(pairs)(
  '%s: no lettering on lines or on other lettering, all inside its box',
  (_, before, after) => {
    expect(faults(beforeAfter(before, after, measure))).toEqual([]);
  },
);

test('the same of any two envelopes, with linings and without', () => {
  fc.assert(
    fc.property(anyLinedEnvelope, anyEnvelope, fc.boolean(), (lined, plain, turned) => {
      const [before, after] = (turned ? [plain, lined] : [lined, plain]).map(drawn) as [Drawn, Drawn];
      expect(faults(beforeAfter(before, after, measure))).toEqual([]);
    }),
    { seed: 5, numRuns: 60 },
  );
});

test('any blank and any marks, sense or nonsense, are drawn at finite places', () => {
  fc.assert(
    fc.property(nonsense, nonsense, (one, other) => {
      const { drawing, width, height } = beforeAfter(drawn(envelope(one)), drawn(envelope(other)), measure);
      const points = drawing.flatMap(({ shape }) =>
        shape.kind === 'text' ? [shape.at] : segmentsOf(shape).flatMap(({ from, to }) => [from, to]),
      );
      const numbers = [width, height, ...points.flatMap(({ x, y }) => [x, y])];
      expect(numbers.filter((each) => !Number.isFinite(each))).toEqual([]);
    }),
    { seed: 6, numRuns: 100 },
  );
});

const drawn = (of: Envelope): Drawn => ({ envelope: of, folding: fold(of) });

const INCH = 25.4;

/** The half-letter card, and what comes of an eighth of an inch more ease (worked out by hand in test/diff/renders.test.ts). */
const older = halfLetter();
const newer = halfLetter({}, { face: { width: 8.875 * INCH, height: 5.875 * INCH } });

const wordsOf = ({ drawing }: Figure): readonly string[] => letteringOf(drawing).map(({ text }) => text);

test('sides and marks that came out otherwise are told twice: as they are, over what they were', () => {
  const words = wordsOf(beforeAfter(older, newer, measure));
  const figures = words.filter((text) => text.endsWith(' in'));
  expect(new Set(figures)).toEqual(
    new Set(['11 7/16 in', 'was 11 1/4 in', '5 3/16 in', 'was 5 1/16 in', '7 5/16 in', 'was 7 3/16 in']),
  );
  // Two sides of the blank, and a mark from each corner.
  expect(figures).toHaveLength(2 * (2 + 4));
});

test('a blank that stays has its sides once, in both systems, and no marks that stay', () => {
  const words = wordsOf(beforeAfter(older, older, measure));
  // 11.25 × 25.4 = 285.75.
  expect(words.filter((text) => / (in|mm)$/.test(text))).toEqual([
    '11 1/4 in',
    '285.8 mm',
    '11 1/4 in',
    '285.8 mm',
  ]);
});

test('what was lies dashed beneath what is, about one centre and to one scale', () => {
  const { drawing } = beforeAfter(older, newer, measure);
  const boxes = (layer: Layer) =>
    drawing
      .filter((mark) => mark.layer === layer && mark.shape.kind === 'path')
      .map(({ shape }) => bounds(segmentsOf(shape).flatMap(({ from, to }) => [from, to])));
  const [was, is] = [boxes('hidden')[0], boxes('cut')[0]];
  if (!was || !is) throw new Error('not drawn');
  expect((was.max.x - was.min.x) / (is.max.x - is.min.x)).toBeCloseTo(11.25 / 11.4375, 6);
  expect(was.max.x + was.min.x).toBeCloseTo(is.max.x + is.min.x, 6);
  expect(was.max.y + was.min.y).toBeCloseTo(is.max.y + is.min.y, 6);
  const order = drawing.map(({ layer }) => layer);
  expect(order.indexOf('inside')).toBeLessThan(order.indexOf('hidden'));
  expect(order.lastIndexOf('hidden')).toBeLessThan(order.indexOf('cut'));
  // Hidden lines are narrow and dashed, the cut is wide (ISO 128-2).
  expect(LINE_KINDS.hidden.dashes).not.toEqual([]);
  expect(LINE_KINDS.hidden.width).toBeLessThan(LINE_KINDS.cut.width);
});

test('marks that are no more are named, and those that are new say so', () => {
  const box = EXTREMES['deep box'];
  const flat = EXTREMES.square;
  expect(wordsOf(beforeAfter(box, flat, measure)).join(' ')).toContain(
    'No longer: second marks at left, right, seal, bottom.',
  );
  expect(wordsOf(beforeAfter(flat, box, measure)).filter((text) => text === 'new')).toHaveLength(4);
});

test('a lining is drawn, and its size told where it differs', () => {
  const lined = halfLetter({}, { liner: 3 });
  const words = wordsOf(beforeAfter(older, lined, measure)).join(' ');
  expect(words).toContain('The outline within is the lining.');
  expect(words).toMatch(/Lining .* in \(.* mm\), was none\./);
});

test('several stand two abreast on one sheet, none on another', () => {
  const figures = [
    beforeAfter(older, newer, measure),
    beforeAfter(newer, older, measure),
    beforeAfter(older, older, measure),
  ];
  const sheet = beforeAfterSheet(figures);
  expect(faults(sheet)).toEqual([]);
  expect(sheet.width).toBeLessThan(2.5 * Math.max(...figures.map(({ width }) => width)));
  expect(wordsOf(sheet)).toHaveLength(figures.flatMap(wordsOf).length);
});
