/* A lining in the pictures of the fold: seen while the flap is open, gone once it is closed. */
import { expect, test } from 'vitest';
import { segmentsOf } from '../../../src/drawing/box.js';
import type { Drawing, Layer } from '../../../src/drawing/drawing.js';
import { stages } from '../../../src/drawing/stages/stages.js';
import type { Job } from '../../../src/emit/emitter.js';
import { flatten } from '../../../src/plane/path.js';
import { bounds, type Polygon } from '../../../src/plane/polygon.js';
import { job } from '../../support/jobs.js';

const WORDS = 'Fold the lining, glue it to the seal flap.';
const notched = { bottom: 'notched', seal: 'notched' } as const;
const INSET = 5;
const flat = job({ liner: INSET });
const box = job({ liner: INSET, depth: 8, corners: notched });

const drawn = ({ folding, envelope }: Job): readonly (readonly [string, Drawing])[] =>
  stages(folding, envelope).map(({ caption, draw }) => [
    caption,
    draw({ scale: 0.1, measure: (text, size) => text.length * size * 0.5 }),
  ]);

const pointsOf = (drawing: Drawing, layer: Layer): Polygon =>
  drawing
    .filter((mark) => mark.layer === layer)
    .flatMap(({ shape }) => segmentsOf(shape).flatMap(({ from, to }) => [from, to]));

test.each([
  ['a flat one', flat, 'Cut the notches.', 'Left flap in, then right. Glue on the bottom flap.', 1],
  ['a box', box, 'Cut the notches.', 'Fold up: the walls stand.', 2],
])(
  '%s: it goes in after the cut, before the first flap, and is folded on the hinge',
  (_, of, cut, next, folds) => {
    const all = drawn(of);
    const at = all.findIndex(([caption]) => caption === WORDS);
    expect([all[at - 1]?.[0], all[at + 1]?.[0]]).toEqual([cut, next]);
    const [, drawing = []] = all[at] ?? [];
    expect(bounds(pointsOf(drawing, 'lining'))).toEqual(
      near(bounds(flatten(of.folding.liner?.outline as never))),
    );
    expect(drawing.filter(({ layer }) => layer === 'lining-fold')).toHaveLength(folds);
  },
);

test.each([
  ['a flat one', flat],
  ['a box', box],
])('%s: it is seen on the open flap, and nowhere once that is closed', (_, of) => {
  const all = drawn(of);
  const seen = all
    .filter(([, drawing]) => pointsOf(drawing, 'lining').length > 0)
    .map(([caption]) => caption);
  expect(seen).toContain(WORDS);
  expect(seen).toContain('Card in.');
  expect(seen.filter((caption) => /closed|back|front/.test(caption))).toEqual([]);
});

test('without one, none is drawn', () => {
  for (const [caption, drawing] of drawn(job({}))) {
    expect(caption).not.toBe(WORDS);
    expect(drawing.some(({ layer }) => layer === 'lining' || layer === 'lining-fold')).toBe(false);
  }
});

/** Corners of regions are put on a grid of 1e-5 mm. */
const near = ({ min, max }: ReturnType<typeof bounds>) => ({
  min: { x: expect.closeTo(min.x, 4), y: expect.closeTo(min.y, 4) },
  max: { x: expect.closeTo(max.x, 4), y: expect.closeTo(max.y, 4) },
});
