/* The dimensioned drawing can be read at every proportion: lettering never lies on a line or on other lettering. */
import { beforeAll, expect, test } from 'vitest';
import { segmentsOf } from '../../src/drawing/box.js';
import { dimensions } from '../../src/drawing/dimensions.js';
import type { TextMeasure } from '../../src/drawing/text-measure.js';
import { openDocument } from '../../src/emit/pdf/document.js';
import { collisions, letteringOf, strays } from '../support/collisions.js';
import { EXTREMES } from '../support/extremes.js';
import { halfLetter } from '../support/jobs.js';
import { emitOptions } from '../support/pdf-pages.js';
import { specJobs } from '../support/spec-jobs.js';

let measure: TextMeasure;
beforeAll(async () => {
  measure = (await openDocument(emitOptions(), { title: '' })).measure;
});

test.each(Object.entries({ ...EXTREMES, ...specJobs() }))(
  '%s: no lettering on lines or on other lettering, all inside the box',
  (_, of) => {
    for (const box of [
      { width: 170, height: 170 },
      { width: 120, height: 120 },
      { width: 170, height: 110 },
      { width: 90, height: 90 },
    ]) {
      const figure = dimensions(of.folding, of.envelope, box, measure);
      expect(collisions(figure.drawing, measure)).toEqual([]);
      expect(figure.width).toBeLessThanOrEqual(box.width + 1e-9);
      expect(figure.height).toBeLessThanOrEqual(box.height + 1e-9);
      expect(strays(figure, measure)).toEqual([]);
    }
  },
);

test('figures are those the ruler reads, the other system beneath', () => {
  const { folding, envelope } = halfLetter();
  const { drawing } = dimensions(folding, envelope, { width: 160, height: 160 }, measure);
  const words = letteringOf(drawing).map(({ text }) => text);
  // Common practice, no source: blank 11 1/4; marks by hand, see the cut sheet's test. 11.25 × 25.4 = 285.75.
  for (const figure of ['11 1/4 in', '285.8 mm', '7 3/16 in', '5 1/16 in', '8 3/4 × 5 3/4 in']) {
    expect(words).toContain(figure);
  }
  expect(words).toEqual(expect.arrayContaining(['seal', 'right', 'bottom', 'left', 'face']));
});

test('all parts of the blank are drawn to one scale', () => {
  const { folding, envelope } = halfLetter();
  const { drawing } = dimensions(folding, envelope, { width: 160, height: 160 }, measure);
  const on = (layer: string) =>
    drawing.filter((mark) => mark.layer === layer).flatMap(({ shape }) => segmentsOf(shape));
  const xs = on('cut').flatMap(({ from, to }) => [from.x, to.x]);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  // Common practice, no source: a mark at 5 1/16 of an edge of 11 1/4 in; seen in a diamond, at that part of half its width.
  const marked = on('mark').map(({ from }) => (2 * (from.x - left)) / (right - left));
  expect(marked.some((part) => Math.abs(part - 5.0625 / 11.25) < 1e-6)).toBe(true);
});
