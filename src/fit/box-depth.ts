import { ceilToStep } from '../measure/ruler.js';
import { STEP } from './largest-card.js';
import { type Try, passes, recipeText, type Wish } from './wish.js';

/** Up to here the default ease of a flat envelope makes room for a thick card; a thicker one wants walls. In mm. */
export const FLAT_UNTIL = 3;

/** Walls tried above the bulk at most. */
const MOST_STEPS = 16;

/** The wall that a filled card wants: none up to 3 mm, then the least on the ruler that holds its bulk and passes every check. */
export function boxDepth(wish: Wish, attempt: Try): number {
  const { bulk = 0, units } = wish;
  if (bulk <= FLAT_UNTIL) return 0;
  const step = STEP[units];
  const least = ceilToStep(bulk, step);
  const depths = Array.from({ length: MOST_STEPS }, (_, index) => least + index * step);
  return depths.find((depth) => passes(attempt(recipeText({ ...wish, depth })))) ?? least;
}
