/* The dimensioned drawing can be read at every proportion: lettering never lies on a line or on other lettering. */
import { beforeAll, expect, test } from 'vitest';
import { segmentsOf } from '../../src/drawing/box.js';
import { dimensions } from '../../src/drawing/dimensions.js';
import type { Drawing, Lettering } from '../../src/drawing/drawing.js';
import type { TextMeasure } from '../../src/drawing/text-measure.js';
import { openDocument } from '../../src/emit/pdf/document.js';
import { clipSegment, halfPlanesOf } from '../../src/plane/clip.js';
import type { Point } from '../../src/plane/point.js';
import type { Polygon } from '../../src/plane/polygon.js';
import { halfLetter, job } from '../support/jobs.js';
import { emitOptions } from '../support/pdf-pages.js';

let measure: TextMeasure;
beforeAll(async () => {
  measure = (await openDocument(emitOptions(), { title: '' })).measure;
});

/** The box about a line of text: from the foot of its descenders to the top of its capitals. */
function boxOf({ text, at, size, anchor, angleDegrees, weight }: Lettering): Polygon {
  const width = measure(text, size, weight);
  const start = { start: 0, middle: -width / 2, end: -width }[anchor];
  const angle = (angleDegrees * Math.PI) / 180;
  const turn = ({ x, y }: Point): Point => ({
    x: at.x + x * Math.cos(angle) - y * Math.sin(angle),
    y: at.y + x * Math.sin(angle) + y * Math.cos(angle),
  });
  // Figures and names here have descenders only in "g" and "p"; a fifth of the em covers those.
  const [low, high] = [-0.2 * size, 0.68 * size];
  return [
    { x: start, y: low },
    { x: start + width, y: low },
    { x: start + width, y: high },
    { x: start, y: high },
  ].map(turn);
}

const letteringOf = (drawing: Drawing): readonly Lettering[] =>
  drawing.flatMap(({ shape }) => (shape.kind === 'text' ? [shape] : []));

/** Pairs of texts, and of a text and a line, that lie on each other. */
function collisions(drawing: Drawing): readonly string[] {
  const texts = letteringOf(drawing).map((shape) => ({ words: shape.text, box: boxOf(shape) }));
  const lines = drawing.flatMap(({ layer, shape }) =>
    segmentsOf(shape).map((segment) => ({ layer, segment })),
  );
  return texts.flatMap(({ words, box }, index) => {
    const inside = halfPlanesOf(box);
    const hit = lines.filter(({ segment }) => clipSegment(segment, inside)).map(({ layer }) => layer);
    const met = texts.slice(index + 1).filter((other) =>
      [
        [box, other.box],
        [other.box, box],
      ].some(([one, another]) =>
        segmentsOf({ kind: 'polyline', points: [...(one as Polygon), (one as Polygon)[0] as Point] }).some(
          (edge) => clipSegment(edge, halfPlanesOf(another as Polygon)),
        ),
      ),
    );
    return [...hit, ...met.map((other) => other.words)].map((other) => `${words} on ${other}`);
  });
}

const notched = { bottom: 'notched', seal: 'notched' } as const;

/** Extremes of size and proportion, flat and box, shifted and cut. */
const CASES = {
  'half-letter card': halfLetter(),
  'card 50 x 35 mm': job({ face: { width: 55, height: 40 }, seam: 5 }),
  'card A3': job({ face: { width: 428, height: 305 } }),
  'card 1 : 3, flap on the long edge': job({ face: { width: 300, height: 100 } }),
  'card 1 : 3, flap on the short edge': job({ face: { width: 100, height: 300 } }),
  square: job({ face: { width: 140, height: 140 } }),
  'shallow box': job({ depth: 3, corners: notched }),
  'deep box': job({ face: { width: 100, height: 80 }, depth: 30, corners: notched }),
  'small deep box with every tip cut': job({
    face: { width: 60, height: 45 },
    seam: 5,
    depth: 12,
    corners: notched,
    flap: { kind: 'blunt', cut: 6, radius: 2 },
    bottom: { kind: 'blunt', cut: 4, radius: 0 },
    sides: { kind: 'blunt', cut: 3, radius: 0 },
  }),
  shifted: job({ shift: 8, flap: { kind: 'rounded', radius: 12 } }),
};

test.each(Object.entries(CASES))(
  '%s: no lettering on lines or on other lettering, all inside the box',
  (_, of) => {
    for (const box of [
      { width: 170, height: 170 },
      { width: 120, height: 120 },
      { width: 170, height: 110 },
      { width: 90, height: 90 },
    ]) {
      const { drawing, width, height } = dimensions(of.folding, of.envelope, box, measure);
      expect(collisions(drawing)).toEqual([]);
      expect(width).toBeLessThanOrEqual(box.width + 1e-9);
      expect(height).toBeLessThanOrEqual(box.height + 1e-9);
      const points = [
        ...letteringOf(drawing).flatMap(boxOf),
        ...drawing.flatMap(({ shape }) => segmentsOf(shape).flatMap(({ from, to }) => [from, to])),
      ];
      for (const { x, y } of points) {
        expect(x).toBeGreaterThanOrEqual(-1e-9);
        expect(x).toBeLessThanOrEqual(width + 1e-9);
        expect(y).toBeGreaterThanOrEqual(-1e-9);
        expect(y).toBeLessThanOrEqual(height + 1e-9);
      }
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

test('the blank is drawn to the scale that is stated', () => {
  const { folding, envelope } = halfLetter();
  const { drawing, scale } = dimensions(folding, envelope, { width: 160, height: 160 }, measure);
  const xs = drawing
    .filter(({ layer }) => layer === 'cut')
    .flatMap(({ shape }) => segmentsOf(shape).flatMap(({ from, to }) => [from.x, to.x]));
  expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(11.25 * 25.4 * Math.SQRT2 * scale, 6);
});
