import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import type { FlapName, GlueLine, Piece } from '../../src/folding/folding.js';
import { foldOver } from '../../src/folding/pieces.js';
import { clip, halfPlanesOf } from '../../src/plane/clip.js';
import { distance, type Point } from '../../src/plane/point.js';
import { area, counterClockwise, type Polygon } from '../../src/plane/polygon.js';
import { regionArea, subtract } from '../../src/plane/region.js';
import { anyEnvelope } from '../support/arbitraries.js';
import { envelope } from '../support/envelopes.js';

/** The flap that carries each strip, and those that it may be glued to. */
const GLUED: Record<GlueLine['name'], { on: FlapName; to: readonly FlapName[] }> = {
  'lower-left': { on: 'bottom', to: ['left'] },
  'lower-right': { on: 'bottom', to: ['right'] },
  centre: { on: 'right', to: ['left'] },
  'seal-left': { on: 'seal', to: ['bottom', 'left', 'right'] },
  'seal-right': { on: 'seal', to: ['bottom', 'left', 'right'] },
  'seal-tip': { on: 'seal', to: ['bottom', 'left', 'right'] },
};

/** The strip as a rectangle about its middle line. */
function strip({ from, to, width }: GlueLine): Polygon {
  const length = distance(from, to);
  const [x, y] = [((to.x - from.x) / length) * (width / 2), ((to.y - from.y) / length) * (width / 2)];
  return counterClockwise([
    { x: from.x + y, y: from.y - x },
    { x: to.x + y, y: to.y - x },
    { x: to.x - y, y: to.y + x },
    { x: from.x - y, y: from.y + x },
  ]);
}

const flap = (pieces: readonly Piece[], name: FlapName): Piece => {
  const found = pieces.find((piece) => piece.kind === 'flap' && piece.flap === name);
  if (!found) throw new Error(`no ${name} flap`);
  return found;
};

const outside = (inner: Polygon, outers: readonly Polygon[]): number => regionArea(subtract([inner], outers));

test('every strip lies on its flap, and over paper that it may be glued to: never over the pocket', () => {
  fc.assert(
    fc.property(anyEnvelope, (any) => {
      const { made, pieces, glue } = fold(any);
      for (const line of glue) {
        const { on, to } = GLUED[line.name];
        expect(line.on).toBe(on);
        expect(to).toContain(line.onto);
        const rectangle = strip(line);
        expect(outside(rectangle, [flap(pieces, on).flat])).toBeLessThan(0.05);
        const closed = rectangle.map((at: Point) => foldOver(made, on, at));
        expect(outside(closed, [flap(pieces, line.onto).folded as Polygon])).toBeLessThan(0.05);
      }
    }),
    { seed: 7, numRuns: 400 },
  );
});

test('a pointed flap is taped along its edges, a broad one across', () => {
  const names = (wishes: Parameters<typeof envelope>[0]): readonly string[] =>
    fold(envelope(wishes)).glue.map(({ name }) => name);
  expect(names({})).toEqual(['lower-left', 'lower-right', 'seal-left', 'seal-right']);
  expect(names({ flap: { kind: 'blunt', cut: 15, radius: 0 } })).toContain('seal-tip');
  expect(names({ fasten: 'tuck' })).toEqual(['lower-left', 'lower-right']);
});

test('an envelope that opens at the end glues its side flaps to each other', () => {
  const { centreSeam, glue } = fold(envelope({ face: { width: 110, height: 155 } }));
  expect(centreSeam).toBe(true);
  expect(glue.map(({ name }) => name)).toContain('centre');
  // The flap's own strips, which could lie on the bottom flap too, take the flap that holds them longest.
  expect(glue.flatMap(({ name, onto }) => (name.startsWith('seal') ? [[name, onto]] : []))).toEqual([
    ['seal-left', 'left'],
    ['seal-right', 'right'],
  ]);
});

test('half-planes of a flap give the flap back', () => {
  const { flat } = flap(fold(envelope({ corners: { bottom: 'folded', seal: 'folded' } })).pieces, 'seal');
  expect(area(clip(flat, halfPlanesOf(flat)))).toBeCloseTo(area(flat), 9);
});
