import { clip, halfPlanesOf } from '../plane/clip.js';
import { overlaps } from '../plane/overlaps.js';
import { area, type Polygon } from '../plane/polygon.js';
import { regionArea, subtract } from '../plane/region.js';
import { closedEars } from './closed-flap.js';
import { isSide } from './corner-directions.js';
import { alongEdges, fromEdges } from './edge-frame.js';
import { type AsMade, FLAP_NAMES, type Folding } from './folding.js';

/** Bare stretches smaller than this together are noise of the grid, in mm². */
const BARE_NOISE = 0.01;

/** Overlaps smaller than this add no layer: paper gives, in mm². */
const LAYER_NOISE = 1;

/** The back of the closed envelope: a rectangle as large as the face, counter-clockwise. */
function back({ face, faceCentre }: AsMade): Polygon {
  const [right, top] = [face.width / 2, face.height / 2];
  return [
    { x: faceCentre.x - right, y: faceCentre.y - top },
    { x: faceCentre.x + right, y: faceCentre.y - top },
    { x: faceCentre.x + right, y: faceCentre.y + top },
    { x: faceCentre.x - right, y: faceCentre.y + top },
  ];
}

/**
 * How the back is covered. Flaps and ears are convex but for the round ends of their notches, which are far below the noise of a layer:
 * only where they leave something bare, what is left by the pieces as they are cut is looked for.
 */
export function cover(
  folding: Pick<Folding, 'made' | 'flapRegions' | 'closedFlaps' | 'pieces'>,
): Pick<Folding, 'layers' | 'bare'> {
  const { made, flapRegions, closedFlaps } = folding;
  const laid: Polygon[] = [];
  for (const flap of FLAP_NAMES) {
    if (isSide(flap)) laid.push(...closedEars(made, flap, flapRegions[flap]));
    laid.push(closedFlaps[flap]);
  }
  const whole = back(made);
  const edges = halfPlanesOf(whole);
  const onBack = laid.map((polygon) => clip(polygon, edges));
  const { covered, deepest } = overlaps(onBack, LAYER_NOISE);
  return { layers: deepest, bare: area(whole) - covered < BARE_NOISE ? [] : bare(whole, folding.pieces) };
}

/** What no piece covers. */
function bare(whole: Polygon, pieces: Folding['pieces']): readonly Polygon[] {
  const onBack = pieces.flatMap(({ folded }) => (folded ? [folded.map(alongEdges)] : []));
  const left = subtract([whole.map(alongEdges)], onBack);
  return regionArea(left) < BARE_NOISE ? [] : left.map((polygon) => polygon.map(fromEdges));
}
