/*
 * No picture paints a hidden piece over a nearer one: at points all over the picture, the surface painted last is the one
 * that a line of sight meets first.
 */
import { expect, test } from 'vitest';
import { segmentsOf } from '../../../src/drawing/box.js';
import { LINE_KINDS } from '../../../src/drawing/line-kinds.js';
import { closedScene } from '../../../src/drawing/stages/back.js';
import { WALLS_UP } from '../../../src/drawing/stages/box-moments.js';
import { cardGoingIn } from '../../../src/drawing/stages/card-leaf.js';
import { paperScene } from '../../../src/drawing/stages/paper-scene.js';
import { drawScene, type Scene } from '../../../src/drawing/stages/scene.js';
import { OBLIQUE, seenFrom } from '../../../src/drawing/stages/view.js';
import type { Job } from '../../../src/emit/emitter.js';
import { closedPose, OPEN } from '../../../src/folding/pose.js';
import { contains } from '../../../src/plane/contains.js';
import type { Point } from '../../../src/plane/point.js';
import type { Point3 } from '../../../src/plane/point3.js';
import { bounds, type Polygon } from '../../../src/plane/polygon.js';
import { EXTREMES } from '../../support/extremes.js';
import { specJobs } from '../../support/spec-jobs.js';

const BOXES = Object.entries({ ...specJobs(), ...EXTREMES }).filter(([, { folding }]) => folding.made.second);

const MOMENTS: Readonly<Record<string, (job: Job) => Scene>> = {
  'walls standing': ({ folding }) => paperScene(folding, WALLS_UP),
  'card going in': ({ folding, envelope }) =>
    paperScene(
      folding,
      { ...closedPose(folding.made), seal: OPEN.seal },
      { within: cardGoingIn(folding.made, envelope.card.value) },
    ),
  'half closed': ({ folding }) =>
    paperScene(folding, { ...closedPose(folding.made), seal: { first: 90, second: 40 } }),
  closed: ({ folding, envelope }) => closedScene(folding, envelope),
};

test('there are boxes to look at', () => {
  expect(BOXES.length).toBeGreaterThanOrEqual(4);
});

test.each(
  BOXES.flatMap(([name, job]) =>
    Object.entries(MOMENTS).map(([moment, scene]) => [`${name}, ${moment}`, scene(job)] as const),
  ),
)('%s', (_, scene) => {
  const painted = drawScene(scene, OBLIQUE, 'left out')
    .filter(({ layer }) => LINE_KINDS[layer].width === 0)
    .map(({ shape }) => segmentsOf(shape).map(({ from }) => from));
  const leaves = scene.leaves.map(({ corners }) => ({ corners, outline: corners.map(seenFrom(OBLIQUE)) }));
  const { min, max } = bounds(painted.flat());
  let looked = 0;
  for (let column = 0.5; column < 40; column++)
    for (let row = 0.5; row < 40; row++) {
      const at = {
        x: min.x + ((max.x - min.x) * column) / 40.3,
        y: min.y + ((max.y - min.y) * row) / 40.7,
      };
      const topmost = painted.findLast((outline) => contains(outline, at));
      const hit = leaves
        .filter(({ outline }) => contains(outline, at))
        .map((leaf) => ({ ...leaf, near: nearness(leaf.corners, at) }));
      if (!topmost || hit.length === 0) continue;
      looked++;
      // Those in one plane lie on each other: which of them is on top is held by the sampled fold.
      const nearest = Math.max(...hit.map(({ near }) => near));
      const top = hit.filter(({ outline }) => same(outline, topmost));
      expect(top.some(({ near }) => nearest - near < 1e-6)).toBe(true);
    }
  expect(looked).toBeGreaterThan(300);
});

/** How far towards the reader a line of sight meets a leaf, from the plane of the view through the origin. */
function nearness([a, b, ...others]: readonly Point3[], at: Point): number {
  // Three corners that span the plane widest.
  const [p, q] = [a as Point3, b as Point3];
  const normals = others.map((r) => cross(minus(q, p), minus(r, p)));
  const normal = normals.reduce((one, other) => (dot(other, other) > dot(one, one) ? other : one));
  const { right, up, towards } = OBLIQUE;
  const start = plus(times(right, at.x), times(up, at.y));
  return dot(normal, minus(p, start)) / dot(normal, towards);
}

const same = (one: Polygon, other: Polygon): boolean =>
  one.length === other.length &&
  one.every((corner) => other.some(({ x, y }) => Math.hypot(x - corner.x, y - corner.y) < 1e-9));

const plus = (a: Point3, b: Point3): Point3 => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z });
const times = (a: Point3, by: number): Point3 => ({ x: a.x * by, y: a.y * by, z: a.z * by });
const minus = (a: Point3, b: Point3): Point3 => plus(a, times(b, -1));
const dot = (a: Point3, b: Point3): number => a.x * b.x + a.y * b.y + a.z * b.z;
const cross = (a: Point3, b: Point3): Point3 => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});
