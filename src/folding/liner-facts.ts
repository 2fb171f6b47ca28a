import { flatten, pathArea } from '../plane/path.js';
import { bounds } from '../plane/polygon.js';
import type { Envelope } from '../recipe/recipe.js';
import { copiesOf } from './copies.js';
import { outerScoreAt } from './corner-directions.js';
import type { Facts } from './facts.js';
import type { Folding } from './folding.js';

/** How many layers of a lining lie in the closed envelope: on the front panel, and on the flap. */
const LAYERS = 2;

/** The numbers of a lining; null where there is none. */
export function linerFacts({ linerPaper, linerCaliper }: Envelope, { made, liner }: Folding): Facts['liner'] {
  if (!liner) return null;
  const { min, max } = bounds(flatten(liner.outline));
  const size = { width: max.x - min.x, height: max.y - min.y };
  const area = pathArea(liner.outline);
  const paper = linerPaper.value;
  return {
    ...size,
    area,
    folds: liner.folds.map(({ from }) => from.y - min.y),
    reach: max.y - outerScoreAt(made, 'seal'),
    thickness: LAYERS * linerCaliper.value,
    caliper: linerCaliper,
    paper: paper?.name ?? null,
    copies: paper?.sheet ? copiesOf(size, paper.sheet.value) : null,
    mass: paper?.weight ? (paper.weight.value * area) / 1e6 : null,
  };
}
