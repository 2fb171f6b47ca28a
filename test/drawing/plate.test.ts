/* The true-size drawing: the blank square to the page, readable at every proportion. */
import { beforeAll, expect, test } from 'vitest';
import { segmentsOf } from '../../src/drawing/box.js';
import { plate } from '../../src/drawing/plate.js';
import type { TextMeasure } from '../../src/drawing/text-measure.js';
import { openDocument } from '../../src/emit/pdf/document.js';
import { collisions, strays } from '../support/collisions.js';
import { EXTREMES } from '../support/extremes.js';
import { halfLetter } from '../support/jobs.js';
import { emitOptions } from '../support/pdf-pages.js';
import { specJobs } from '../support/spec-jobs.js';

let measure: TextMeasure;
beforeAll(async () => {
  measure = (await openDocument(emitOptions(), { title: '' })).measure;
});

const INCH = 25.4;

test('the blank is as large as it is cut, its edges level and upright', () => {
  const { folding, envelope } = halfLetter({}, { corners: { bottom: 'folded', seal: 'folded' } });
  const cut = plate(folding, envelope, measure)
    .drawing.filter(({ layer }) => layer === 'cut')
    .flatMap(({ shape }) => segmentsOf(shape));
  // Common practice, no source: 11 1/4 in square for the half-letter card. Samples in the key are not cut.
  expect(cut).toHaveLength(4);
  for (const { from, to } of cut) {
    const [along, across] = [Math.abs(to.x - from.x), Math.abs(to.y - from.y)].sort((a, b) => b - a);
    expect(along).toBeCloseTo(11.25 * INCH, 9);
    expect(across).toBeCloseTo(0, 9);
  }
});

test.each(Object.entries({ ...EXTREMES, ...specJobs() }))(
  '%s: no lettering on lines or on other lettering, all inside its box',
  (_, of) => {
    const figure = plate(of.folding, of.envelope, measure);
    expect(collisions(figure.drawing, measure)).toEqual([]);
    expect(strays(figure, measure)).toEqual([]);
  },
);
