import { clip, type HalfPlane } from '../plane/clip.js';
import { type Path, type RoundedCorner, roundedPath } from '../plane/path.js';
import { type Polygon, tidy } from '../plane/polygon.js';
import { blankCorners } from './blank.js';
import { besideCorners, endOf, notchRadius, treatmentAt } from './corners.js';
import { firstScoreAt, isSide, NEIGHBOURS, OUTWARD, outerScoreAt, outwardOf } from './corner-directions.js';
import { pointedHeight } from './flaps.js';
import { type AsMade, eachFlap, type FlapName, type Folding } from './folding.js';

/** The corners in the order in which the blank's outline passes them. */
const AROUND: readonly FlapName[] = ['bottom', 'right', 'seal', 'left'];

/** Points this near a score or a cut lie on it, in mm. */
const ON_LINE = 1e-7;

/** The blank before trimming, counter-clockwise from the bottom corner. */
export function blankOutline({ blank }: AsMade): Polygon {
  const corners = blankCorners(blank);
  return AROUND.map((flap) => corners[flap]);
}

/** The half-plane of all points beyond a line square to a flap's axis. */
export const beyond = (flap: FlapName, at: number): HalfPlane => ({
  a: -OUTWARD[flap].x,
  b: -OUTWARD[flap].y,
  c: -at,
});

/** The half-plane of all points on the blank's side of such a line. */
export const within = (flap: FlapName, at: number): HalfPlane => ({
  a: OUTWARD[flap].x,
  b: OUTWARD[flap].y,
  c: at,
});

/** Where each flap ends, with its wall. */
export function flapRegions(made: AsMade, caliper: number): Folding['flapRegions'] {
  const blank = blankOutline(made);
  return eachFlap((flap) => flapRegion(made, blank, flap, caliper));
}

function flapRegion(made: AsMade, blank: Polygon, flap: FlapName, caliper: number): readonly RoundedCorner[] {
  const { cut, radius } = made.tips[flap];
  const tipAt = outerScoreAt(made, flap) + pointedHeight(made, flap) - cut;
  const region = clip(blank, [
    beyond(flap, firstScoreAt(made, flap)),
    ...besideCorners(made, flap, caliper),
    within(flap, tipAt),
  ]);
  return region.map(({ x, y }) => ({
    x,
    y,
    radius: Math.abs(outwardOf(flap, { x, y }) - tipAt) < ON_LINE ? radius : 0,
  }));
}

/** The outline that is cut: the flaps' outlines joined at the face's corners, with true arcs. */
export function cutOutline(made: AsMade, regions: Folding['flapRegions'], caliper: number): Path {
  const corners: RoundedCorner[] = [];
  for (const flap of AROUND) corners.push(...freeEdge(made, flap, regions[flap], caliper));
  return roundedPath(tidy(corners));
}

/** A flap's outline from one end of its first score round the tip to the other, notch corners rounded. */
function freeEdge(
  made: AsMade,
  flap: FlapName,
  region: readonly RoundedCorner[],
  caliper: number,
): readonly RoundedCorner[] {
  const onScore = region.map(
    (corner) => Math.abs(outwardOf(flap, corner) - firstScoreAt(made, flap)) < ON_LINE,
  );
  const start = region.findIndex((_, index) => onScore[index] && !onScore[(index + 1) % region.length]);
  if (start < 0) return [];
  const turned = [...region.slice(start), ...region.slice(0, start)];
  if (!isSide(flap)) return turned;
  return turned.map((corner, index) => {
    if (index !== 0 && index !== turned.length - 1) return corner;
    const neighbour = NEIGHBOURS[flap][index === 0 ? 0 : 1];
    const notched = treatmentAt(made, endOf(flap, neighbour)) === 'notched';
    return notched && outwardOf(neighbour, corner) < firstScoreAt(made, neighbour) - ON_LINE
      ? { ...corner, radius: notchRadius(caliper) }
      : corner;
  });
}
