/* The strip of pictures and the small card can be read at every proportion. */
import { beforeAll, expect, test } from 'vitest';
import { segmentsOf } from '../../src/drawing/box.js';
import type { Figure } from '../../src/drawing/figure.js';
import { LINE_KINDS } from '../../src/drawing/line-kinds.js';
import { stages } from '../../src/drawing/stages/stages.js';
import { stepRows, stepStrip } from '../../src/drawing/step-strip.js';
import { summaryCard } from '../../src/drawing/summary-card.js';
import type { TextMeasure } from '../../src/drawing/text-measure.js';
import { openDocument } from '../../src/emit/pdf/document.js';
import { collisions, letteringOf, strays } from '../support/collisions.js';
import { EXTREMES } from '../support/extremes.js';
import { halfLetter, job } from '../support/jobs.js';
import { emitOptions } from '../support/pdf-pages.js';
import { specJobs } from '../support/spec-jobs.js';

let measure: TextMeasure;
beforeAll(async () => {
  measure = (await openDocument(emitOptions(), { title: '' })).measure;
});

const CASES = Object.entries({
  ...specJobs(),
  ...EXTREMES,
  tucked: job({ fasten: 'tuck' }),
  'centre seam, long': job({ face: { width: 90, height: 290 } }),
});

test.each(CASES)('%s: no lettering on lines or on other lettering, all inside the box', (_, of) => {
  for (const width of [180, 120, 60]) expectClean(stepStrip(of.folding, of.envelope, width, measure));
  expectClean(summaryCard(of, measure));
});

function expectClean(figure: Figure): void {
  // Surfaces have no lines of their own: what is seen of their outlines is drawn as edges.
  const lines = figure.drawing.filter(({ layer }) => LINE_KINDS[layer].width > 0);
  expect(collisions(lines, measure)).toEqual([]);
  expect(strays(figure, measure)).toEqual([]);
}

test('numbers and captions are there, in order', () => {
  const { folding, envelope } = halfLetter();
  const words = letteringOf(stepStrip(folding, envelope, 180, measure).drawing).map(({ text }) => text);
  const all = words.join(' ');
  const at = stages(folding, envelope).map(({ caption }, index) => all.indexOf(`${index + 1} ${caption}`));
  expect(Math.min(...at)).toBeGreaterThanOrEqual(0);
  expect([...at].sort((a, b) => a - b)).toEqual(at);
});

test('the flat blank and the closed back are drawn to one scale', () => {
  const { folding, envelope } = halfLetter();
  const [first, second] = stepRows(folding, envelope, 172, measure);
  const across = (figure: Figure | undefined, layer: string, from: number, to: number): number => {
    const xs = (figure?.drawing ?? [])
      .filter((mark) => mark.layer === layer)
      .flatMap(({ shape }) => segmentsOf(shape).flatMap((segment) => [segment.from.x, segment.to.x]))
      .filter((x) => x > from && x < to);
    return Math.max(...xs) - Math.min(...xs);
  };
  // Four cells of 40 mm with 4 mm between. Blank's diagonal and face's width in inches: see half-letter.test.ts.
  const blank = across(first, 'cut', 0, 40);
  const back = across(second, 'edge', 88, 128);
  expect(back / blank).toBeCloseTo(8.750446 / 15.909903, 5);
});

test('eight stages stand in two rows of four on a page, nine of a box in rows of five and four', () => {
  const numbers = (of: Parameters<typeof summaryCard>[0]): readonly number[] =>
    stepRows(of.folding, of.envelope, 172, measure).map(
      ({ drawing }) => letteringOf(drawing).filter(({ weight }) => weight === 'bold').length,
    );
  expect(numbers(halfLetter())).toEqual([4, 4]);
  expect(numbers(EXTREMES['deep box'])).toEqual([5, 4]);
});

test('a card says what it is for', () => {
  const words = letteringOf(summaryCard(halfLetter(), measure).drawing).map(({ text }) => text);
  // 8.5 × 25.4 = 215.9, 5.5 × 25.4 = 139.7, 11.25 × 25.4 = 285.75.
  expect(words.slice(0, 2)).toEqual([
    'Half-letter card',
    'Card 8 1/2 × 5 1/2 in (215.9 × 139.7 mm). Blank 11 1/4 in square (285.8 mm).',
  ]);
});

test('a title of any length leaves room for the pictures', () => {
  for (const title of ['x'.repeat(300), 'The long winter of the tide tables '.repeat(9)]) {
    const figure = summaryCard(halfLetter({ title }), measure);
    expectClean(figure);
    expect(letteringOf(figure.drawing).some(({ text }) => text.endsWith('…'))).toBe(true);
  }
});

test('same input, same drawing', () => {
  const draw = () => {
    const { folding, envelope } = halfLetter();
    return stepStrip(folding, envelope, 180, measure);
  };
  expect(JSON.stringify(draw())).toBe(JSON.stringify(draw()));
});
