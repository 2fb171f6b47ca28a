import type { Polygon } from '../plane/polygon.js';
import { intersect, regionArea, subtract } from '../plane/region.js';
import { alongEdges, fromEdges } from './edge-frame.js';
import type { AsMade, Piece } from './folding.js';

/** Bare stretches smaller than this together are noise of the grid, in mm². */
const BARE_NOISE = 0.01;

/** Overlaps smaller than this add no layer: paper gives, in mm². */
const LAYER_NOISE = 1;

/** The back of the closed envelope: a rectangle as large as the face, counter-clockwise. */
export function back({ face, faceCentre }: AsMade): Polygon {
  const [right, top] = [face.width / 2, face.height / 2];
  return [
    { x: faceCentre.x - right, y: faceCentre.y - top },
    { x: faceCentre.x + right, y: faceCentre.y - top },
    { x: faceCentre.x + right, y: faceCentre.y + top },
    { x: faceCentre.x - right, y: faceCentre.y + top },
  ];
}

/** What of the back no piece covers. */
export function bare(made: AsMade, pieces: readonly Piece[]): readonly Polygon[] {
  const left = subtract([back(made).map(alongEdges)], onBack(pieces));
  return regionArea(left) < BARE_NOISE ? [] : left.map((polygon) => polygon.map(fromEdges));
}

/** The greatest number of pieces that lie over one place of the back, ears included. */
export function layers(pieces: readonly Piece[]): number {
  const polygons = onBack(pieces);
  const deepest = (region: readonly Polygon[] | null, from: number): number => {
    let most = 0;
    // Once those that are left could add no layer more, they are not looked at.
    for (let index = from; index < polygons.length - most; index++) {
      const polygon = [polygons[index] as Polygon];
      const common = region ? intersect(region, polygon) : polygon;
      if (Math.abs(regionArea(common)) > LAYER_NOISE) most = Math.max(most, 1 + deepest(common, index + 1));
    }
    return most;
  };
  return deepest(null, 0);
}

const onBack = (pieces: readonly Piece[]): readonly Polygon[] =>
  pieces.flatMap(({ folded }) => (folded ? [folded.map(alongEdges)] : []));
