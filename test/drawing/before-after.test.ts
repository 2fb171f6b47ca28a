/* What became of a blank, as a picture: readable between any two proportions. */
import { beforeAll, expect, test } from 'vitest';
import { beforeAfter } from '../../src/drawing/before-after.js';
import { segmentsOf } from '../../src/drawing/box.js';
import type { TextMeasure } from '../../src/drawing/text-measure.js';
import { openDocument } from '../../src/emit/pdf/document.js';
import { boxOf, collisions, letteringOf } from '../support/collisions.js';
import { EXTREMES } from '../support/extremes.js';
import { emitOptions } from '../support/pdf-pages.js';

let measure: TextMeasure;
beforeAll(async () => {
  measure = (await openDocument(emitOptions(), { title: '' })).measure;
});

const all = Object.entries(EXTREMES);
const pairs = all.flatMap(([older, before]) =>
  all.map(([newer, after]) => [`${older} → ${newer}`, before, after] as const),
);

test.each(pairs)(
  '%s: no lettering on lines or on other lettering, all inside its box',
  (_, before, after) => {
    const { drawing, width, height } = beforeAfter(before, after, measure);
    expect(collisions(drawing, measure)).toEqual([]);
    const points = [
      ...letteringOf(drawing).flatMap((shape) => boxOf(shape, measure)),
      ...drawing.flatMap(({ shape }) => segmentsOf(shape).flatMap(({ from, to }) => [from, to])),
    ];
    for (const { x, y } of points) {
      expect(x).toBeGreaterThanOrEqual(-1e-9);
      expect(x).toBeLessThanOrEqual(width + 1e-9);
      expect(y).toBeGreaterThanOrEqual(-1e-9);
      expect(y).toBeLessThanOrEqual(height + 1e-9);
    }
  },
);
