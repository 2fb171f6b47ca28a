/* On the seal flap, hatching bars raised work and wax from what lies over seams: there and nowhere else. */
import { expect, test } from 'vitest';
import { segmentsOf } from '../../src/drawing/box.js';
import { drawZones } from '../../src/drawing/draw-zones.js';
import type { Job } from '../../src/emit/emitter.js';
import { flapZones } from '../../src/folding/flap-zones.js';
import { contains } from '../../src/plane/contains.js';
import { between, distance, type Segment } from '../../src/plane/point.js';
import { area, type Polygon } from '../../src/plane/polygon.js';
import { regionArea } from '../../src/plane/region.js';
import { job } from '../support/jobs.js';

/** How far apart the hatching of seams is, in mm. */
const SPACING = 2.5;

const CASES: readonly (readonly [string, Job])[] = [
  ['two patches', job({})],
  ['joined side flaps', job({ face: { width: 110, height: 153 }, seam: 12 })],
  ['tiny', job({ face: { width: 55, height: 40 }, seam: 5 })],
  ['sealed', job({ fasten: 'seal', shift: 6, flap: { kind: 'rounded', radius: 12 } })],
];

test.each(CASES)('%s', (_, { folding, envelope }) => {
  const { print, raised } = flapZones(folding);
  const strokes = drawZones(folding, envelope)
    .filter(({ layer, shape }) => layer === 'raised-zone' && shape.kind === 'line')
    .flatMap(({ shape }): readonly Segment[] => segmentsOf(shape));
  const middles = strokes.map(({ from, to }) => between(from, to, 0.5));
  expect(middles.filter((at) => !contains(print as Polygon, at))).toEqual([]);
  const parts = raised.filter((part) => area(part) > 0);
  const holes = raised.filter((part) => area(part) < 0);
  const isFree = (at: (typeof middles)[number]): boolean =>
    parts.some((part) => contains(part, at)) && !holes.some((hole) => contains(hole, at));
  expect(middles.filter(isFree)).toEqual([]);
  // A hatched area is as large as its strokes are long, times their distance, but for a part of a stroke at either side.
  const barred = area(print as Polygon) - regionArea(raised);
  const hatched = strokes.reduce((sum, { from, to }) => sum + distance(from, to), 0) * SPACING;
  expect(barred).toBeGreaterThan(0);
  expect(Math.abs(hatched - barred)).toBeLessThan(0.15 * barred);
});
