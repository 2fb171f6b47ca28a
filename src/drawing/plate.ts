import type { Folding } from '../folding/folding.js';
import type { Envelope } from '../recipe/recipe.js';
import { drawBlank } from './draw-blank.js';
import type { Figure } from './dimensions.js';
import { place, SQUARE_TO_PAGE } from './place.js';
import type { TextMeasure } from './text-measure.js';

/**
 * The one true-size drawing that every file format converts: the blank with its edges square to the page, seen from the
 * inside, dimensioned, over a legend. From (0, 0) to its size, in mm, y up.
 */
export function plate(folding: Folding, envelope: Envelope, _measure: TextMeasure): Figure {
  const { width, height } = folding.made.blank;
  const blank = place(drawBlank(folding, envelope), { angleDegrees: SQUARE_TO_PAGE, x: width / 2, y: height / 2 });
  return { drawing: blank, width, height, scale: 1 };
}
