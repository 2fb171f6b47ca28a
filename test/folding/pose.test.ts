/* Where pieces lie while they are folded: paper neither stretches nor tears, and what is closed lies where it must. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import { FLAP_NAMES, type FlapName, type Folding } from '../../src/folding/folding.js';
import { closedPose, OPEN, type Pose, posed } from '../../src/folding/pose.js';
import type { Point3 } from '../../src/plane/point3.js';
import { anyEnvelope } from '../support/arbitraries.js';
import { envelope } from '../support/envelopes.js';

const apart = (a: Point3, b: Point3): number => Math.hypot(b.x - a.x, b.y - a.y, b.z - a.z);

/** The corners of one piece in a pose. */
function corners(folding: Folding, pose: Pose, kind: string, flap: FlapName): readonly Point3[] {
  const index = folding.pieces.findIndex((piece) => piece.kind === kind && piece.flap === flap);
  return posed(folding, pose)[index] ?? [];
}

const angle = (most: number) => fc.integer({ min: 0, max: most });
const turned = fc.record({ first: angle(180), second: angle(180) });
const anyPose: fc.Arbitrary<Pose> = fc.record({ left: turned, right: turned, seal: turned, bottom: turned });

test('open, every piece lies flat on the bench as it was cut', () => {
  const folding = fold(envelope({ corners: { bottom: 'folded', seal: 'folded' } }));
  const flat = folding.pieces.flatMap((piece) => piece.flat);
  posed(folding, OPEN)
    .flat()
    .forEach((at, index) => {
      expect(apart(at, { x: 0, y: 0, ...flat[index], z: 0 })).toBe(0);
    });
});

test('in any pose each piece stays as stiff as card: no corner comes nearer to another', () => {
  fc.assert(
    fc.property(anyEnvelope, anyPose, (any, pose) => {
      const folding = fold(any);
      posed(folding, pose).forEach((piece, index) => {
        const flat = folding.pieces[index]?.flat ?? [];
        piece.forEach((at, corner) => {
          const [first, before] = [flat[0], flat[corner]];
          if (!first || !before) throw new Error('a corner is lost');
          expect(apart(piece[0] as Point3, at)).toBeCloseTo(
            Math.hypot(before.x - first.x, before.y - first.y),
            9,
          );
        });
      });
    }),
    { seed: 11, numRuns: 60 },
  );
});

test('closed, every flap and ear lies on the back where the folding puts it: on the face, or at the height of a box', () => {
  fc.assert(
    fc.property(anyEnvelope, (any) => {
      const folding = fold(any);
      const closed = posed(folding, closedPose(folding.made));
      folding.pieces.forEach(({ folded }, index) => {
        folded?.forEach(({ x, y }, corner) => {
          const at = closed[index]?.[corner] as Point3;
          expect(apart(at, { x, y, z: folding.made.depth })).toBeLessThan(1e-9);
        });
      });
    }),
    { seed: 12, numRuns: 60 },
  );
});

test('the walls of a closed box stand square on the face’s edges, as high as the box is deep', () => {
  const folding = fold(envelope({ depth: 8, corners: { bottom: 'notched', seal: 'notched' } }));
  const { face, faceCentre, depth } = folding.made;
  const edge = {
    left: { axis: 'x', at: faceCentre.x - face.width / 2 },
    right: { axis: 'x', at: faceCentre.x + face.width / 2 },
    seal: { axis: 'y', at: faceCentre.y + face.height / 2 },
    bottom: { axis: 'y', at: faceCentre.y - face.height / 2 },
  } as const;
  for (const flap of FLAP_NAMES) {
    const wall = corners(folding, closedPose(folding.made), 'wall', flap);
    for (const at of wall) expect(at[edge[flap].axis]).toBeCloseTo(edge[flap].at, 9);
    expect(Math.min(...wall.map(({ z }) => z))).toBeCloseTo(0, 9);
    expect(Math.max(...wall.map(({ z }) => z))).toBeCloseTo(depth, 9);
  }
});

test('a flap half up stands straight over its score, and its tip as high as the flap', () => {
  const folding = fold(envelope({}));
  const up = { ...OPEN, seal: { first: 90, second: 0 } };
  const flap = corners(folding, up, 'flap', 'seal');
  const hinge = folding.made.faceCentre.y + folding.made.face.height / 2;
  for (const { y } of flap) expect(y).toBeCloseTo(hinge, 9);
  expect(Math.max(...flap.map(({ z }) => z))).toBeCloseTo(folding.made.heights.seal, 9);
});

test('walls up and flaps not yet over: a box stands open as a tray, its flaps upright over the walls', () => {
  const folding = fold(envelope({ depth: 8, corners: { bottom: 'notched', seal: 'notched' } }));
  const standing = { first: 90, second: 0 };
  const tray = { left: standing, right: standing, seal: standing, bottom: standing };
  const flap = corners(folding, tray, 'flap', 'left');
  expect(Math.min(...flap.map(({ z }) => z))).toBeCloseTo(folding.made.depth, 9);
  const height = folding.made.depth + folding.made.heights.left;
  expect(Math.max(...flap.map(({ z }) => z))).toBeCloseTo(height, 9);
});

test.each([0, 45, 90, 150, 180])(
  'an ear keeps to the bottom flap at %i° and to the side flap under it',
  (first) => {
    const folding = fold(envelope({}));
    const over = { first: 180, second: 0 };
    const pose = { ...OPEN, left: over, right: over, bottom: { first, second: 0 } };
    const inSpace = posed(folding, pose);
    // Wherever two pieces share a corner of the blank, they share it in space.
    const places = new Map<string, Point3>();
    folding.pieces.forEach(({ flat }, index) => {
      flat.forEach(({ x, y }, corner) => {
        const name = `${x.toFixed(6)} ${y.toFixed(6)}`;
        const at = inSpace[index]?.[corner] as Point3;
        expect(apart(at, places.get(name) ?? at)).toBeLessThan(1e-9);
        places.set(name, at);
      });
    });
  },
);
