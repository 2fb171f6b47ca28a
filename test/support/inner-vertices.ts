import { expect } from 'vitest';

/** What of a crease pattern in the terms of the FOLD format is looked at here. */
interface Pattern {
  readonly vertices_coords: readonly (readonly number[])[];
  readonly edges_vertices: readonly (readonly [number, number])[];
  readonly edges_assignment: readonly string[];
}

/** The creases around each vertex that no boundary touches: their directions in degrees, and their senses. */
export function innerVertices({ vertices_coords, edges_vertices, edges_assignment }: Pattern) {
  return vertices_coords.flatMap(([x = 0, y = 0], vertex) => {
    const around = edges_vertices.flatMap(([a, b], edge) => {
      if (a !== vertex && b !== vertex) return [];
      const [toX = 0, toY = 0] = vertices_coords[a === vertex ? b : a] ?? [];
      return [{ degrees: (Math.atan2(toY - y, toX - x) * 180) / Math.PI, sense: edges_assignment[edge] }];
    });
    return around.length > 0 && around.every(({ sense }) => sense !== 'B') ? [around] : [];
  });
}

/**
 * What the theory of flat folding asks of a vertex inside the paper. Both theorems as restated on
 * wiki-gateway.eudic.net, "Kawasaki's theorem": alternate angles around it sum to 180°; mountains and valleys differ
 * by exactly two.
 */
export function expectFlatFoldable(pattern: Pattern): void {
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
