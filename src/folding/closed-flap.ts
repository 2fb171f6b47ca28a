import { clip } from '../plane/clip.js';
import { flatten, type RoundedCorner, roundedPath } from '../plane/path.js';
import { counterClockwise, type Polygon } from '../plane/polygon.js';
import { firstScoreAt, isSide, outerScoreAt } from './corner-directions.js';
import type { AsMade, FlapName } from './folding.js';
import { beyond, within } from './outline.js';
import { foldOver } from './pieces.js';

/** A flap as it lies on the closed envelope: convex, counter-clockwise, without the round ends of its notches. */
export function closedFlap(made: AsMade, flap: FlapName, region: readonly RoundedCorner[]): Polygon {
  const ears = isSide(flap)
    ? (['bottom', 'seal'] as const).map((end) => within(end, firstScoreAt(made, end)))
    : [];
  const whole = flatten(roundedPath(region));
  const beyondScore = clip(whole, [beyond(flap, outerScoreAt(made, flap)), ...ears]);
  return counterClockwise(beyondScore.map((at) => foldOver(made, flap, at)));
}
