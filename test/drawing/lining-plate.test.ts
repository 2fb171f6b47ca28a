/* A lining's own drawing: what is cut, where it folds, readable at every proportion. */
import { beforeAll, expect, test } from 'vitest';
import { segmentsOf } from '../../src/drawing/box.js';
import type { Layer } from '../../src/drawing/drawing.js';
import { liningPlate } from '../../src/drawing/lining-plate.js';
import type { TextMeasure } from '../../src/drawing/text-measure.js';
import { openDocument } from '../../src/emit/pdf/document.js';
import { collisions, letteringOf, strays } from '../support/collisions.js';
import { halfLetter, job } from '../support/jobs.js';
import { emitOptions } from '../support/pdf-pages.js';

let measure: TextMeasure;
beforeAll(async () => {
  measure = (await openDocument(emitOptions(), { title: '' })).measure;
});

const INCH = 25.4;

test('none without a lining', () => {
  const { folding, envelope } = halfLetter();
  expect(liningPlate(folding, envelope, measure)).toBeNull();
});

test('the lining of the half-letter card, an inset of 1/4 in', () => {
  const { folding, envelope } = halfLetter({}, { liner: INCH / 4 });
  const drawing = liningPlate(folding, envelope, measure)?.drawing ?? [];
  const on = (layer: Layer) =>
    drawing.filter((mark) => mark.layer === layer).flatMap(({ shape }) => segmentsOf(shape));
  const xs = on('lining').flatMap(({ from, to }) => [from.x, to.x]);
  const ys = on('lining').flatMap(({ from, to }) => [from.y, to.y]);
  // The face is 8.7504 in wide as made: blank 11 1/4 in, D = 11.25·√2 = 15.9099; less two side scores 5.0625/√2 = 3.5797 each:
  // 8.7504 in, less the inset on both sides.
  expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo((8.7504 - 0.5) * INCH, 2);
  // One fold, level, where the flap is hinged: the face is 5.7452 in high, the lining's foot lies 1/4 in above its foot.
  const [fold] = on('lining-fold');
  expect(on('lining-fold')).toHaveLength(1);
  expect((fold?.from.y ?? 0) - Math.min(...ys)).toBeCloseTo((5.7452 - 0.25) * INCH, 2);
});

const notched = { bottom: 'notched', seal: 'notched' } as const;

test.each(
  Object.entries({
    'half-letter card': halfLetter({}, { liner: 6 }),
    'card 50 x 35 mm': job({ face: { width: 55, height: 40 }, seam: 5, liner: 3 }),
    'card A3': job({ face: { width: 428, height: 305 }, liner: 10 }),
    '1 : 3, flap on the short edge': job({ face: { width: 100, height: 300 }, liner: 6 }),
    box: job({ face: { width: 100, height: 80 }, depth: 30, corners: notched, liner: 4 }),
    'rounded flap': job({ flap: { kind: 'rounded', radius: 20 }, liner: 5 }),
  }),
)('%s: no lettering on lines or on other lettering, all inside its box', (_, of) => {
  const figure = liningPlate(of.folding, of.envelope, measure);
  if (!figure) throw new Error('no lining');
  expect(letteringOf(figure.drawing).length).toBeGreaterThan(3);
  expect(collisions(figure.drawing, measure)).toEqual([]);
  expect(strays(figure, measure)).toEqual([]);
});
