import { flatten } from '../plane/path.js';
import type { Point } from '../plane/point.js';
import { area, type Polygon } from '../plane/polygon.js';
import { regionArea, subtract } from '../plane/region.js';
import { alongEdges, fromEdges } from './edge-frame.js';
import type { Folding } from './folding.js';

/** A piece that is trimmed off the blank, in its frame, in mm. */
export interface Waste {
  readonly kind: 'notch' | 'tip';
  /** Counter-clockwise, arcs flattened to within 0.01 mm. */
  readonly outline: Polygon;
}

/** What trimming takes off the blank: a piece with one of the blank's corners is a tip, any other a notch. */
export function waste({ blankOutline: corners, cutOutline: outline }: Folding): readonly Waste[] {
  const isCorner = (at: Point): boolean =>
    corners.some((corner) => Math.hypot(corner.x - at.x, corner.y - at.y) < AT_CORNER);
  return subtract([corners.map(alongEdges)], [flatten(outline).map(alongEdges)])
    .map((piece) => piece.map(fromEdges))
    .filter((piece) => regionArea([piece]) > NOISE && area(piece) > 0)
    .map((piece) => ({ kind: piece.some(isCorner) ? 'tip' : 'notch', outline: piece }));
}

/** A point this near a corner is that corner, in mm: pieces are computed on a grid of 1e-5 mm. */
const AT_CORNER = 1e-4;

/** A piece smaller than this is noise of the grid, in mm². */
const NOISE = 0.01;
