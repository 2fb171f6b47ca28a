import { clip, clipSegment, halfPlanesOf, movedIn } from '../plane/clip.js';
import { clipPath } from '../plane/clip-path.js';
import { flatten, type Path, roundedPath } from '../plane/path.js';
import type { Segment } from '../plane/point.js';
import { bounds } from '../plane/polygon.js';
import type { Envelope } from '../recipe/recipe.js';
import { TAPE_CLEARANCE } from './closure.js';
import { besideCorners } from './corners.js';
import { firstScoreAt, outerScoreAt } from './corner-directions.js';
import { pointedHeight } from './flaps.js';
import type { AsMade, GlueLine, Liner } from './folding.js';
import { blankOutline, within } from './outline.js';

/** A lining stays this far off tape and glue, in mm. */
const CLEAR_OF_GLUE = TAPE_CLEARANCE / 2;

/** Corners this near the height of the topmost belong to the tip, in mm. */
const LEVEL = 1e-7;

/**
 * The lining: its inset inside the face's scores and the seal flap's cut edges, and clear of the strips that close that
 * flap. (The other strips lie on the side flaps and the bottom flap, where no lining is.)
 */
export function liner(envelope: Envelope, made: AsMade, glue: readonly GlueLine[]): Liner | null {
  const inset = envelope.liner.value;
  if (inset === null) return null;
  const beside = [
    within('bottom', firstScoreAt(made, 'bottom')),
    ...besideCorners(made, 'seal', envelope.caliper.value),
  ].map((edge) => movedIn(edge, inset));
  const outline = clipPath(tipOutline(envelope, inset, made, glue), [...beside, ...acrossTip(glue)]);
  if (!outline || bounds(flatten(outline)).min.y >= firstScoreAt(made, 'seal')) return null;
  return { outline, folds: folds(made, outline) };
}

/**
 * The blank inside its edges and a blunt cut, the seal tip rounded concentrically. Where strips run along the seal flap's
 * edges, the lining keeps as far from the whole of its tip as from them: the tape's width and 1 mm on either side.
 */
function tipOutline({ tape }: Envelope, inset: number, made: AsMade, glue: readonly GlueLine[]): Path {
  const { cut, radius } = made.tips.seal;
  const taped = glue.some(({ name }) => name === 'seal-left' || name === 'seal-right');
  const off = taped ? Math.max(inset, tape.value + TAPE_CLEARANCE) : inset;
  const tipAt = outerScoreAt(made, 'seal') + pointedHeight(made, 'seal') - cut;
  const edges = halfPlanesOf(blankOutline(made)).map((edge) => movedIn(edge, edge.b > 0 ? off : inset));
  const corners = clip(blankOutline(made), [...edges, within('seal', tipAt - off)]);
  const top = bounds(corners).max.y;
  return roundedPath(
    corners.map((at) => ({ ...at, radius: top - at.y < LEVEL ? Math.max(0, radius - off) : 0 })),
  );
}

/** Keeps it below a strip across the seal flap's tip. */
const acrossTip = (glue: readonly GlueLine[]) =>
  glue
    .filter(({ name }) => name === 'seal-tip')
    .map(({ from, width }) => within('seal', from.y - width / 2 - CLEAR_OF_GLUE));

/** Its own part of the seal flap's scores. */
function folds(made: AsMade, outline: Path): readonly Segment[] {
  const inside = halfPlanesOf(flatten(outline));
  const reach = made.diagonal;
  const scores = [firstScoreAt(made, 'seal'), ...(made.second ? [outerScoreAt(made, 'seal')] : [])];
  return scores.flatMap((y) => clipSegment({ from: { x: -reach, y }, to: { x: reach, y } }, inside) ?? []);
}
