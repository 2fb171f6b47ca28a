import { clip, halfPlanesOf } from './clip.js';
import { area, type Polygon } from './polygon.js';

/** How polygons lie over each other. */
export interface Overlaps {
  /** The area that they cover together, in square units. */
  readonly covered: number;
  /** The greatest number of them over one place. */
  readonly deepest: number;
}

/** Looks through some convex, counter-clockwise polygons, each with all that come after it. An overlap of at most `noise` adds no depth. */
export function overlaps(all: readonly Polygon[], noise: number): Overlaps {
  // One that bounds nothing has no edges, and would shut nothing out.
  const polygons = all.filter(({ length }) => length > 2);
  const edges = polygons.map(halfPlanesOf);
  const look = (region: Polygon | null, from: number): Overlaps => {
    let covered = 0;
    let deepest = 0;
    for (let index = from; index < polygons.length; index++) {
      const common = region ? clip(region, edges[index] ?? []) : (polygons[index] ?? []);
      if (common.length === 0) continue;
      const size = area(common);
      const later = look(common, index + 1);
      // What lies under later ones is theirs to count.
      covered += size - later.covered;
      if (size > noise) deepest = Math.max(deepest, 1 + later.deepest);
    }
    return { covered, deepest };
  };
  return look(null, 0);
}
