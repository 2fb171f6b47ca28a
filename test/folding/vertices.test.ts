/*
 * What the theory of flat folding asks of a vertex inside the paper. Both theorems as restated on
 * wiki-gateway.eudic.net, "Kawasaki's theorem": alternate angles around it sum to 180°; mountains and valleys differ
 * by exactly two.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import { anyEnvelope } from '../support/arbitraries.js';
import { type CreasePattern, creasePattern } from '../support/crease-pattern.js';
import { envelope } from '../support/envelopes.js';

/** The creases around each vertex that no boundary touches: their directions in degrees, and their senses. */
function innerVertices({ vertices_coords, edges_vertices, edges_assignment }: CreasePattern) {
  return vertices_coords.flatMap(([x, y], vertex) => {
    const around = edges_vertices.flatMap(([a, b], edge) => {
      if (a !== vertex && b !== vertex) return [];
      const [toX, toY] = vertices_coords[a === vertex ? b : a] as [number, number];
      return [{ degrees: (Math.atan2(toY - y, toX - x) * 180) / Math.PI, sense: edges_assignment[edge] }];
    });
    return around.length > 0 && around.every(({ sense }) => sense !== 'B') ? [around] : [];
  });
}

function expectFlatFoldable(pattern: CreasePattern): void {
  for (const around of innerVertices(pattern)) {
    const directions = around.map(({ degrees }) => degrees).sort((a, b) => a - b);
    const angles = directions.map((degrees, index) =>
      index + 1 < directions.length
        ? (directions[index + 1] as number) - degrees
        : (directions[0] as number) + 360 - degrees,
    );
    const alternate = angles.filter((_, index) => index % 2 === 0).reduce((sum, angle) => sum + angle, 0);
    expect(alternate).toBeCloseTo(180, 6);
    const mountains = around.filter(({ sense }) => sense === 'M').length;
    expect(Math.abs(mountains - (around.length - mountains))).toBe(2);
  }
}

const folded = { bottom: 'folded', seal: 'folded' } as const;

test('four creases meet where an ear is kept: three valleys and one mountain', () => {
  const vertices = innerVertices(creasePattern(fold(envelope({ corners: folded }))));
  expect(vertices).toHaveLength(4);
  for (const around of vertices)
    expect(
      around
        .map(({ sense }) => sense)
        .sort()
        .join(''),
    ).toBe('MVVV');
});

test('a notched corner leaves no vertex inside the paper', () => {
  const notched = { bottom: 'notched', seal: 'notched' } as const;
  expect(innerVertices(creasePattern(fold(envelope({ corners: notched }))))).toEqual([]);
});

test('the usual envelope keeps its two lower ears and no others', () => {
  expect(innerVertices(creasePattern(fold(envelope({}))))).toHaveLength(2);
});

test('without seam the face’s corners lie on the blank’s edges: no vertex, four valleys, no odd crease', () => {
  const bareMinimum = fold(envelope({ seam: 0, step: 1e-6, corners: folded }));
  expect(innerVertices(creasePattern(bareMinimum))).toEqual([]);
});

test('Kawasaki and Maekawa hold at every crossing, whatever the proportions', () => {
  fc.assert(
    fc.property(anyEnvelope, (any) => expectFlatFoldable(creasePattern(fold(any)))),
    { seed: 2, numRuns: 100 },
  );
});
