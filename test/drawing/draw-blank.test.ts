/* The blank as a picture: what is drawn, on which layer, and where. */
import { expect, test } from 'vitest';
import { segmentsOf } from '../../src/drawing/box.js';
import { drawBlank } from '../../src/drawing/draw-blank.js';
import type { Drawing, Layer } from '../../src/drawing/drawing.js';
import { LINE_KINDS } from '../../src/drawing/line-kinds.js';
import { place, SQUARE_TO_PAGE } from '../../src/drawing/place.js';
import type { Job } from '../../src/emit/emitter.js';
import type { Segment } from '../../src/plane/point.js';
import { compileText } from '../support/compile-text.js';
import { halfLetter, job } from '../support/jobs.js';

const draw = ({ folding, envelope }: Job): Drawing => drawBlank(folding, envelope);

const on = (drawing: Drawing, layer: Layer): readonly Segment[] =>
  drawing.filter((mark) => mark.layer === layer).flatMap(({ shape }) => segmentsOf(shape));

const lengthOf = (segments: readonly Segment[]): number =>
  segments.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);

const INCH = 25.4;

test('a blank without notches and trims is cut along its four edges, and nothing falls away', () => {
  const drawing = draw(halfLetter({}, { corners: { bottom: 'folded', seal: 'folded' } }));
  // Common practice, no source: 11 1/4 in square for the half-letter card.
  expect(lengthOf(on(drawing, 'cut'))).toBeCloseTo(4 * 11.25 * INCH, 6);
  expect(on(drawing, 'waste')).toEqual([]);
  expect(on(drawing, 'blank')).toEqual([]);
});

test('folded ears give each end score two odd parts; a notch gives none', () => {
  const odd = (corners: { bottom: 'folded' | 'notched'; seal: 'folded' | 'notched' }): number =>
    on(draw(halfLetter({}, { corners })), 'odd-score').length;
  expect(odd({ bottom: 'folded', seal: 'folded' })).toBe(4);
  expect(odd({ bottom: 'folded', seal: 'notched' })).toBe(2);
  expect(odd({ bottom: 'notched', seal: 'notched' })).toBe(0);
});

test('what is notched away keeps the edge of the blank, drawn thin, and is hatched', () => {
  const drawing = draw(halfLetter());
  const edge = on(drawing, 'blank');
  expect(edge.length).toBe(2);
  expect(on(drawing, 'waste').length).toBeGreaterThan(4);
  // Together with the outline the thin edges make up the square: on its top right edge x + y is half the diagonal.
  const right = on(drawing, 'cut').filter(({ from, to }) => {
    const half = (11.25 * INCH) / Math.SQRT2;
    return [from, to].every(({ x, y }) => Math.abs(x + y - half) < 1e-3);
  });
  expect(lengthOf(right) + lengthOf(edge) / 2).toBeCloseTo(11.25 * INCH, 3);
});

test('a box has a second score outside each first', () => {
  const drawing = draw(job({ depth: 6, corners: { bottom: 'notched', seal: 'notched' } }));
  expect(on(drawing, 'score').length).toBe(4);
  expect(on(drawing, 'second-score').length).toBe(4);
});

test('each flap has its mark on both edges of its corner; a box has its second marks too', () => {
  expect(on(draw(halfLetter()), 'mark').length).toBe(8);
  expect(on(draw(job({ depth: 6, corners: { bottom: 'notched', seal: 'notched' } })), 'mark').length).toBe(
    16,
  );
});

test('marks lie at their distance from the corner, along the edge', () => {
  // Turned square to the page about the centre, the bottom corner is at lower left and the right one at lower right.
  const drawing = place(draw(halfLetter()), { angleDegrees: SQUARE_TO_PAGE });
  const half = (11.25 * INCH) / 2;
  const below = on(drawing, 'mark').filter(({ from }) => Math.abs(from.y + half) < 1e-6);
  const fromLeft = below.map(({ from }) => (from.x + half) / INCH).sort((a, b) => a - b);
  // 7 3/16 from the bottom corner, 5 1/16 from the right one.
  expect(fromLeft[0]).toBeCloseTo(11.25 - 5.0625, 6);
  expect(fromLeft[1]).toBeCloseTo(7.1875, 6);
});

test('turned square to the page, the edges are level and upright and keep their place', () => {
  const drawing = place(draw(job({ blank: { width: 230, height: 220 } })), {
    angleDegrees: SQUARE_TO_PAGE,
    x: 200,
    y: 300,
  });
  const points = on(drawing, 'cut').flatMap(({ from, to }) => [from, to]);
  expect(Math.min(...points.map(({ x }) => x))).toBeCloseTo(200 - 115, 6);
  expect(Math.max(...points.map(({ x }) => x))).toBeCloseTo(200 + 115, 6);
  expect(Math.min(...points.map(({ y }) => y))).toBeCloseTo(300 - 110, 6);
  expect(Math.max(...points.map(({ y }) => y))).toBeCloseTo(300 + 110, 6);
});

test('lines keep the place in the recipe from which they follow', () => {
  const text = 'units in\nenvelope tides {\n  card: 8 1/2 x 5 1/2\n  seal-mark: 7\n  bottom-mark: 7\n}\n';
  const [recipe] = compileText(text).recipes;
  if (!recipe) throw new Error('the recipe does not compile');
  const words = draw(recipe).flatMap(({ layer, shape, span }) =>
    span && shape.kind === 'line' && layer === 'score' && shape.from.y === shape.to.y
      ? [span.source.text.slice(span.start, span.end)]
      : [],
  );
  expect(new Set(words)).toEqual(new Set(['7']));
});

test('line kinds that the hand must tell apart differ in width or dashes', () => {
  const apart: readonly Layer[] = [
    'cut',
    'blank',
    'waste',
    'score',
    'second-score',
    'odd-score',
    'glue',
    'join',
  ];
  const looks = apart.map((layer) => JSON.stringify([LINE_KINDS[layer].width, LINE_KINDS[layer].dashes]));
  expect(new Set(looks).size).toBe(apart.length);
});
