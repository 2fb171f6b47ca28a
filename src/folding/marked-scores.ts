import { between, distance, type Segment } from '../plane/point.js';
import { blankCorners } from './blank.js';
import { NEIGHBOURS } from './corner-directions.js';
import type { AsMade, Crease, FlapName } from './folding.js';

/** A flap's scores as a straightedge draws them on the uncut blank: from mark to fellow mark. */
export function markedScores(made: AsMade, flap: FlapName): readonly (Segment & Pick<Crease, 'order'>)[] {
  const corners = blankCorners(made.blank);
  const [before, after] = NEIGHBOURS[flap];
  const mark = (towards: FlapName, alongEdge: number) =>
    between(corners[flap], corners[towards], alongEdge / (distance(corners[flap], corners[towards]) || 1));
  return (['first', 'second'] as const).flatMap((order) => {
    const along = made[order]?.[flap].alongEdge;
    return along === undefined ? [] : [{ order, from: mark(before, along), to: mark(after, along) }];
  });
}
