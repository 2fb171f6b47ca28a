/*
 * What is drawn of the closed back is what a second, plain fold of sampled paper finds: between neighbouring points a
 * visible edge is crossed where another flap is on top, and a visible or dashed one where other flaps lie there at all.
 */
import { expect, test } from 'vitest';
import { segmentsOf } from '../../../src/drawing/box.js';
import type { Drawing, Layer } from '../../../src/drawing/drawing.js';
import { back } from '../../../src/drawing/stages/back.js';
import type { Job } from '../../../src/emit/emitter.js';
import type { AsMade } from '../../../src/folding/folding.js';
import { type Point, type Segment, turn } from '../../../src/plane/point.js';
import { EXTREMES } from '../../support/extremes.js';
import { job } from '../../support/jobs.js';
import { earsAt, flapsAt, type OnBlank } from '../../support/sampled-paper.js';
import { specJobs } from '../../support/spec-jobs.js';

const folded = { bottom: 'folded', seal: 'folded' } as const;

/** A seal lies on top of all flaps; a tucked flap lies as no other. Both are looked at below. */
const CASES = Object.entries({
  ...specJobs(),
  ...EXTREMES,
  'every corner folded': job({ corners: folded }),
}).filter(([, { envelope }]) => envelope.fasten.value === 'glue');

const COLUMNS = 37;
const ROWS = 29;

test.each(CASES)('%s', (_, of) => {
  const drawing = back(of.folding, of.envelope, 'dashed');
  const faults = neighbours(of).flatMap(([one, other]) => {
    const between = { from: one, to: other };
    const [here, there] = [stackAt(of, one), stackAt(of, other)];
    const lines = (layers: readonly Layer[], differ: boolean, what: string): readonly string[] => {
      const crossed = crossings(drawing, layers, between);
      // A path past a tip meets two edges and sees the same as before.
      return (crossed === 0 && differ) || (crossed === 1 && !differ)
        ? [`${crossed} ${what} from ${said(one)} to ${said(other)}: ${here.all} | ${there.all}`]
        : [];
    };
    return [
      ...lines(['edge'], here.top !== there.top, 'visible edges'),
      ...lines(['edge', 'hidden'], here.all !== there.all, 'edges'),
    ];
  });
  expect(faults).toEqual([]);
});

test('a tucked flap is seen only where no bottom flap lies', () => {
  const of = job({ fasten: 'tuck' });
  const drawing = back(of.folding, of.envelope, 'dashed');
  const { made } = of.folding;
  // The seal flap's tip lies on the middle line, under the bottom flap: no visible edge passes there, a dashed one does.
  const tip = { x: made.faceCentre.x, y: made.faceCentre.y + made.face.height / 2 - made.heights.seal };
  const across = { from: { ...tip, y: tip.y - 1 }, to: { ...tip, x: tip.x + 0.01, y: tip.y + 1 } };
  expect(flapsAt(made, 0.15, onBlank(made, { ...tip, y: tip.y + 1 }))).toEqual(
    expect.arrayContaining(['bottom', 'seal']),
  );
  expect(crossings(drawing, ['edge'], across)).toBe(0);
  expect(crossings(drawing, ['hidden'], across)).toBeGreaterThan(0);
});

test('one that does not reach the bottom flap is not seen past the side flaps', () => {
  const of = job({ face: { width: 110, height: 153 }, seam: 12, fasten: 'tuck' });
  const drawing = back(of.folding, of.envelope, 'dashed');
  const { made } = of.folding;
  const tip = { x: made.faceCentre.x, y: made.faceCentre.y + made.face.height / 2 - made.heights.seal };
  const across = { from: { ...tip, y: tip.y - 1 }, to: { ...tip, x: tip.x + 0.01, y: tip.y + 1 } };
  expect(flapsAt(made, 0.15, onBlank(made, { ...tip, y: tip.y + 1 }))).toEqual(['left', 'right', 'seal']);
  expect(crossings(drawing, ['edge'], across)).toBe(0);
  expect(crossings(drawing, ['hidden'], across)).toBeGreaterThan(0);
});

/** Points beside and above each other all over the back, clear of its edges, where notches have round ends. */
function neighbours({ folding: { made } }: Job): readonly (readonly [Point, Point])[] {
  const { face, faceCentre } = made;
  const at = (column: number, row: number): Point => ({
    x: faceCentre.x + (face.width - 4) * (column / COLUMNS - 0.5) + 0.0113,
    y: faceCentre.y + (face.height - 4) * (row / ROWS - 0.5) + 0.0071,
  });
  const pairs: (readonly [Point, Point])[] = [];
  for (let column = 0; column < COLUMNS; column++)
    for (let row = 0; row < ROWS; row++)
      pairs.push([at(column, row), at(column + 1, row)], [at(column, row), at(column, row + 1)]);
  return pairs;
}

function stackAt({ folding: { made }, envelope }: Job, at: Point) {
  const on = onBlank(made, at);
  const flaps = flapsAt(made, envelope.caliper.value, on);
  return { top: flaps.at(-1) ?? 'face', all: `${flaps.join(' ')} ${earsAt(made, on)}` };
}

/** From the frame of the standing blank to distances along the edges that meet in its bottom corner. */
const onBlank = ({ blank }: AsMade, { x, y }: Point): OnBlank => ({
  x: blank.width / 2 + (y + x) / Math.SQRT2,
  y: blank.height / 2 + (y - x) / Math.SQRT2,
});

/** How many lines a path crosses. */
const crossings = (drawing: Drawing, layers: readonly Layer[], path: Segment): number =>
  drawing
    .filter(({ layer }) => layers.includes(layer))
    .flatMap(({ shape }) => segmentsOf(shape))
    .filter((line) => apart(path, line) && apart(line, path)).length;

/** Whether a segment's ends lie on either side of another's line. */
const apart = ({ from, to }: Segment, line: Segment): boolean =>
  turn(from, to, line.from) > 0 !== turn(from, to, line.to) > 0;

const said = ({ x, y }: Point): string => `${x.toFixed(1)}, ${y.toFixed(1)}`;
