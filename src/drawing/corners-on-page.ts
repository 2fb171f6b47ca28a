import { blankCorners } from '../folding/blank.js';
import type { FlapRecord } from '../folding/folding.js';
import type { Point } from '../plane/point.js';
import type { Size } from '../recipe/recipe.js';

/** A blank's corners where a placement puts them. */
export function cornersOnPage(blank: Size, at: (point: Point) => Point): FlapRecord<Point> {
  const { left, right, seal, bottom } = blankCorners(blank);
  return { left: at(left), right: at(right), seal: at(seal), bottom: at(bottom) };
}
