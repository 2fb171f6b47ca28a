/*
 * The half-letter envelope, stage by stage, by hand. Blank 11 1/4 in, side marks 5 1/16, seal and bottom marks 7 3/16 in
 * (common practice, no source), so that in inches
 *   half the diagonal  11.25 / √2              =  7.954951
 *   side scores        5.0625 / √2             =  3.579728 from their corners
 *   end scores         7.1875 / √2             =  5.082330
 *   face               2 (7.954951 − 3.579728) =  8.750446 wide, 2 (7.954951 − 5.082330) = 5.745242 high.
 */
import { beforeAll, expect, test } from 'vitest';
import { segmentsOf } from '../../../src/drawing/box.js';
import type { Drawing, Layer } from '../../../src/drawing/drawing.js';
import type { Stage } from '../../../src/drawing/stages/stage.js';
import { stages } from '../../../src/drawing/stages/stages.js';
import { openDocument } from '../../../src/emit/pdf/document.js';
import type { Point } from '../../../src/plane/point.js';
import { bounds } from '../../../src/plane/polygon.js';
import { halfLetter } from '../../support/jobs.js';
import { emitOptions } from '../../support/pdf-pages.js';

const INCH = 25.4;
const HALF_WIDTH = 4.375223 * INCH;
const HALF_HEIGHT = 2.872621 * INCH;
const SIDE = 3.579728 * INCH;
const END = 5.08233 * INCH;

const { folding, envelope } = halfLetter();
const CAPTIONS = [
  'Cut the blank, mark its edges.',
  'Score from mark to mark.',
  'Cut the notches.',
  'Left flap in, then right. Glue on the bottom flap.',
  'Bottom flap up, glued.',
  'Card in.',
  'Flap closed: the back. Dashed: edges under paper; dotted: glue.',
  'The front: room for address and stamp.',
];
const [MARKED, SCORED, NOTCHED, SIDES_IN, BOTTOM_UP, CARD_IN, BACK, FRONT] = CAPTIONS;

let drawn: ReadonlyMap<string, Drawing>;
beforeAll(async () => {
  const { measure } = await openDocument(emitOptions(), { title: '' });
  const draw = ({ caption, draw: at }: Stage) => [caption, at({ scale: 0.1, measure })] as const;
  drawn = new Map(stages(folding, envelope).map(draw));
});

const on = (caption: string | undefined, ...layers: readonly Layer[]): Drawing =>
  (drawn.get(caption ?? '') ?? []).filter(({ layer }) => layers.includes(layer));

const pointsOf = (drawing: Drawing): readonly Point[] =>
  drawing.flatMap(({ shape }) => segmentsOf(shape).flatMap(({ from, to }) => [from, to]));

const middles = (drawing: Drawing): readonly Point[] =>
  drawing.flatMap(({ shape }) =>
    segmentsOf(shape).map(({ from, to }) => ({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 })),
  );

test('eight stages, in the order of the work', () => {
  expect([...drawn.keys()]).toEqual(CAPTIONS);
});

test('the marked blank is whole and unscored; each flap has a mark on both edges of its corner', () => {
  expect(on(MARKED, 'mark')).toHaveLength(8);
  expect(on(MARKED, 'score', 'odd-score', 'edge')).toEqual([]);
  const { min, max } = bounds(pointsOf(on(MARKED, 'cut')));
  expect(max.x - min.x).toBeCloseTo(2 * 7.954951 * INCH, 3);
});

test('the scored blank: sides and seal from edge to edge, the bottom’s ends beyond the side scores odd', () => {
  const scores = on(SCORED, 'score').map(({ shape }) =>
    bounds(pointsOf([{ layer: 'score', shape, span: null }])),
  );
  // Between two marks a score is as long as twice its distance from the corner: 7.159456 and 10.16466 in.
  const lengths = scores.map(({ min, max }) => Math.max(max.x - min.x, max.y - min.y) / INCH).sort();
  expect(lengths.map((length) => length.toFixed(4))).toEqual(['10.1647', '7.1595', '7.1595', '8.7504']);
  expect(on(SCORED, 'odd-score')).toHaveLength(2);
});

test('two notches fall away', () => {
  expect(on(NOTCHED, 'waste').length).toBeGreaterThan(0);
  for (const { y } of middles(on(NOTCHED, 'waste'))) expect(y).toBeGreaterThan(HALF_HEIGHT);
});

test('sides in: their tips stop 0.796 in short of the middle', () => {
  // 4.375223 − 3.579728 = 0.795495 in from the middle, on the blank's middle line.
  const tips = pointsOf(on(SIDES_IN, 'edge')).filter(({ y }) => Math.abs(y) < 1e-6);
  const inner = tips.map(({ x }) => Math.abs(x) / INCH).sort();
  expect(inner[0]).toBeCloseTo(0.795495, 5);
  const { min, max } = bounds(pointsOf(on(SIDES_IN, 'edge')));
  expect([min.x, max.x].map((x) => x / INCH)).toEqual([
    expect.closeTo(-4.375223, 5),
    expect.closeTo(4.375223, 5),
  ]);
  // Seal and bottom flap still lie open, and are scored.
  expect([min.y, max.y].map((y) => y / INCH)).toEqual([
    expect.closeTo(-7.954951, 5),
    expect.closeTo(7.954951, 5),
  ]);
  expect(on(SIDES_IN, 'score')).toHaveLength(2);
});

test('bottom up: its tip stands 2.21 in above the middle, over both side flaps; two strips show through it', () => {
  // It lands 5.082330 in above its fold: 5.082330 − 2.872621 = 2.209709 above the middle.
  const onAxis = pointsOf(on(BOTTOM_UP, 'edge')).filter(({ x, y }) => Math.abs(x) < 1e-6 && y < HALF_HEIGHT);
  expect(Math.max(...onAxis.map(({ y }) => y / INCH))).toBeCloseTo(2.209709, 5);
  const glue = on(BOTTOM_UP, 'glue');
  expect(glue.length).toBeGreaterThan(0);
  for (const { x, y } of middles(glue)) {
    expect(y + Math.abs(x)).toBeLessThan(2.209709 * INCH);
    expect(y).toBeGreaterThan(-HALF_HEIGHT);
  }
});

test('the card stands half out of the mouth, before the open flap and behind the others', () => {
  const { min, max } = bounds(pointsOf(on(CARD_IN, 'card')));
  expect(max.x - min.x).toBeCloseTo(8.5 * INCH, 6);
  expect((min.y + max.y) / 2).toBeCloseTo(HALF_HEIGHT, 2);
  // No edge of the card is drawn where the bottom flap lies: its foot is hidden but for two ends at the most.
  const foot = middles(on(CARD_IN, 'edge')).filter(({ y }) => Math.abs(y - min.y) < 0.01);
  for (const { x, y } of foot) expect(y + Math.abs(x)).toBeGreaterThanOrEqual(2.209709 * INCH - 0.01);
});

test('the closed back is the face, 8.750 × 5.745 in', () => {
  const { min, max } = bounds(pointsOf(on(BACK, 'edge', 'hidden')));
  expect((max.x - min.x) / INCH).toBeCloseTo(8.750446, 5);
  expect((max.y - min.y) / INCH).toBeCloseTo(5.745242, 5);
});

test('it is drawn of seven pieces: the face’s inside, four flaps from their show side, two corner pieces turned twice', () => {
  expect(on(BACK, 'show-side')).toHaveLength(4);
  expect(on(BACK, 'inside')).toHaveLength(3);
});

test('what is dashed lies under the seal flap or the bottom flap', () => {
  // Both are bounded by lines at 45° through their tips, 5.082330 in from their folds.
  const sealTip = HALF_HEIGHT - END;
  const bottomTip = END - HALF_HEIGHT;
  const hidden = middles(on(BACK, 'hidden'));
  expect(hidden.length).toBeGreaterThan(4);
  for (const { x, y } of hidden)
    expect(Math.max(y - Math.abs(x) - sealTip, bottomTip - Math.abs(x) - y)).toBeGreaterThan(-1e-6);
});

test('the seal flap’s tip is seen 0.663 in above the bottom fold', () => {
  // 5.745242 − 5.082330 = 0.662912 in.
  const tip = Math.min(
    ...pointsOf(on(BACK, 'edge'))
      .filter(({ x }) => Math.abs(x) < 1e-6)
      .map(({ y }) => y),
  );
  expect((tip + HALF_HEIGHT) / INCH).toBeCloseTo(0.662912, 5);
});

test('the front is mirrored: stamp at the reader’s top right, address below it, nothing of the flaps but dashes', () => {
  const edges = on(FRONT, 'edge');
  const { min, max } = bounds(pointsOf(edges));
  expect((max.x - min.x) / INCH).toBeCloseTo(8.750446, 5);
  expect(edges.length).toBeLessThanOrEqual(8);
  const words = on(FRONT, 'lettering').flatMap(({ shape }) => (shape.kind === 'text' ? [shape] : []));
  const [address, stamp] = ['address', 'stamp'].map((text) => words.find((word) => word.text === text)?.at);
  expect(stamp?.x).toBeGreaterThan(0);
  expect(stamp?.y).toBeGreaterThan(0);
  expect(address?.y).toBeLessThan(stamp?.y ?? 0);
  expect(SIDE).toBeLessThan(HALF_WIDTH);
});
