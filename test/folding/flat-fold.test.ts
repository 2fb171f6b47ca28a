/* Our crease pattern, folded flat by a general-purpose origami library, lands where our own folding says. */
import fc from 'fast-check';
import ear from 'rabbit-ear';
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import type { Folding } from '../../src/folding/folding.js';
import { bounds } from '../../src/plane/polygon.js';
import { anyEnvelope } from '../support/arbitraries.js';
import { creasePattern } from '../support/crease-pattern.js';

/** How far apart the two may land, in mm. */
const APART = 1e-4;

function expectSameLanding(folding: Folding): void {
  const graph = ear.graph.populate(creasePattern(folding));
  const centre = folding.made.faceCentre;
  // The face is the one around its centre; the library keeps it where it is and folds the rest.
  const root = (graph.faces_vertices ?? []).findIndex((corners) => {
    const { min, max } = bounds(
      corners.map((corner) => {
        const [x, y] = graph.vertices_coords[corner] as [number, number];
        return { x, y };
      }),
    );
    return Math.hypot((min.x + max.x) / 2 - centre.x, (min.y + max.y) / 2 - centre.y) < 1e-3;
  });
  expect(root).toBeGreaterThanOrEqual(0);
  const landed = ear.graph.makeVerticesCoordsFlatFolded(graph, root);
  for (const { flat, folded } of folding.pieces) {
    flat.forEach((at, index) => {
      const vertex = graph.vertices_coords.findIndex(([x, y]) => Math.hypot(x - at.x, y - at.y) < APART);
      expect(vertex).toBeGreaterThanOrEqual(0);
      const [x, y] = landed[vertex] as [number, number];
      const ours = (folded ?? flat)[index] as { x: number; y: number };
      expect(Math.hypot(x - ours.x, y - ours.y)).toBeLessThan(APART);
    });
  }
}

test('every corner of every flat envelope lands where the library folds it', () => {
  fc.assert(
    fc.property(
      anyEnvelope.filter(({ depth }) => depth.value === 0),
      (any) => expectSameLanding(fold(any)),
    ),
    { seed: 3, numRuns: 100 },
  );
});
