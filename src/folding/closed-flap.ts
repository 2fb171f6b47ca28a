import { clip } from '../plane/clip.js';
import { flatten, type RoundedCorner, roundedPath } from '../plane/path.js';
import { counterClockwise, type Polygon } from '../plane/polygon.js';
import { treatmentAt } from './corners.js';
import { firstScoreAt, isSide, outerScoreAt } from './corner-directions.js';
import { type AsMade, FLAP_NAMES, type FlapName } from './folding.js';
import { beyond, within } from './outline.js';
import { foldOver } from './pieces.js';

const ENDS = FLAP_NAMES.filter((flap) => !isSide(flap));

/** A flap as it lies on the closed envelope: convex, counter-clockwise, without the round ends of its notches. */
export function closedFlap(made: AsMade, flap: FlapName, region: readonly RoundedCorner[]): Polygon {
  const ears = isSide(flap) ? ENDS.map((end) => within(end, firstScoreAt(made, end))) : [];
  const whole = flatten(roundedPath(region));
  const beyondScore = clip(whole, [beyond(flap, outerScoreAt(made, flap)), ...ears]);
  return counterClockwise(beyondScore.map((at) => foldOver(made, flap, at)));
}

/** The ears of a side flap as they lie on the closed envelope, over with the flap and over again with its ends: as above. */
export const closedEars = (
  made: AsMade,
  side: FlapName,
  region: readonly RoundedCorner[],
): readonly Polygon[] =>
  ENDS.filter((end) => treatmentAt(made, end) === 'folded').map((end) => {
    const flat = clip(flatten(roundedPath(region)), [beyond(end, firstScoreAt(made, end))]);
    return counterClockwise(flat.map((at) => foldOver(made, end, foldOver(made, side, at))));
  });
