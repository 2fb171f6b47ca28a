/*
 * Where two walls of a box meet. Paper has a thickness: bent up, a wall takes it up on one side of its score or the other, by
 * where the scorer's line comes to lie in the bend. Whatever that is, walls must not run into each other, and what stays
 * open between them must stay small. (The figures are our judgement.)
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import type { FlapName, Folding } from '../../src/folding/folding.js';
import { clip } from '../../src/plane/clip.js';
import { area, bounds, type Polygon } from '../../src/plane/polygon.js';
import { regionArea, subtract } from '../../src/plane/region.js';
import { envelope } from '../support/envelopes.js';

/** Boxes of every proportion, in papers from tissue to board. */
const anyBox = fc
  .record({
    width: fc.integer({ min: 80, max: 400 }),
    ratio: fc.double({ min: 1 / 3, max: 3, noNaN: true }),
    depth: fc.integer({ min: 3, max: 30 }),
    seam: fc.integer({ min: 5, max: 20 }),
    caliper: fc.integer({ min: 5, max: 100 }).map((hundredths) => hundredths / 100),
  })
  .map(({ width, ratio, depth, seam, caliper }) =>
    envelope({
      face: { width, height: Math.max(60, Math.round(width / ratio)) },
      depth,
      seam,
      caliper,
      corners: { bottom: 'notched', seal: 'notched' },
    }),
  );

const law = (holds: (folding: Folding, caliper: number) => void): void =>
  fc.assert(
    fc.property(anyBox, (box) => holds(fold(box), box.caliper.value)),
    { seed: 31, numRuns: 100 },
  );

const wall = ({ pieces }: Folding, name: FlapName): Polygon =>
  pieces.find(({ kind, flap }) => kind === 'wall' && flap === name)?.flat as Polygon;

/** How far a standing side wall reaches towards the seal and the bottom fold, from a height above the face upwards. */
function reach(folding: Folding, side: 'left' | 'right', height: number) {
  const out = side === 'left' ? -1 : 1;
  const { faceCentre, face } = folding.made;
  const above = clip(wall(folding, side), [
    { a: -out, b: 0, c: -out * faceCentre.x - face.width / 2 - height },
  ]);
  const { min, max } = bounds(above);
  return { seal: max.y - faceCentre.y, bottom: faceCentre.y - min.y };
}

test('standing walls do not run into each other, whichever side of the score their thickness falls on', () => {
  law((folding, caliper) => {
    // Within one thickness of the face the paper is bent, not a wall; there the round end of the notch lies.
    for (const side of ['left', 'right'] as const)
      for (const reached of Object.values(reach(folding, side, caliper)))
        for (const inside of [0, 0.25, 0.5, 0.75, 1])
          expect(reached).toBeLessThanOrEqual(folding.made.face.height / 2 - inside * caliper + 1e-6);
  });
});

test('a side wall stops half a millimetre or two thicknesses short of the end score, a quarter more than the paper needs', () => {
  law((folding, caliper) => {
    for (const side of ['left', 'right'] as const)
      for (const reached of Object.values(reach(folding, side, folding.made.depth / 2))) {
        const toScore = folding.made.face.height / 2 - reached;
        expect(toScore).toBeLessThanOrEqual(Math.max(0.5, 2 * caliper) + 1e-6);
        expect(toScore - caliper).toBeGreaterThanOrEqual(0.25 - 1e-6);
      }
  });
});

test('the relief is cut off the side walls alone: end walls are as wide as the face, so that no corner has a pinhole', () => {
  law((folding) => {
    const { face, depth } = folding.made;
    for (const end of ['seal', 'bottom'] as const)
      expect(area(wall(folding, end))).toBeCloseTo(face.width * depth, 3);
  });
});

test('face and back have no pinhole at their corners', () => {
  law(({ made, pieces }) => {
    const { face, faceCentre } = made;
    const whole = pieces.find(({ kind }) => kind === 'face')?.flat as Polygon;
    expect(area(whole)).toBeCloseTo(face.width * face.height, 3);
    const folded = pieces.flatMap((piece) => (piece.folded ? [piece.folded] : []));
    for (const across of [-1, 1])
      for (const up of [-1, 1]) {
        const corner = {
          x: faceCentre.x + (across * face.width) / 2,
          y: faceCentre.y + (up * face.height) / 2,
        };
        const square = [0, 5].flatMap((right) =>
          (right === 0 ? [0, 5] : [5, 0]).map((inward) => ({
            x: corner.x - across * right,
            y: corner.y - up * inward,
          })),
        );
        expect(regionArea(subtract([square], folded))).toBeLessThan(0.001);
      }
  });
});
