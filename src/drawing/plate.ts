import { FLAP_NAMES, type Folding } from '../folding/folding.js';
import type { Envelope } from '../recipe/recipe.js';
import { blankDimensions, dimensionsReach } from './blank-dimensions.js';
import { cornerName } from './corner-name.js';
import { cornersOnPage } from './corners-on-page.js';
import { drawBlank } from './draw-blank.js';
import { drawSeams } from './draw-seams.js';
import { drawZones } from './draw-zones.js';
import type { Drawing } from './drawing.js';
import { FIGURE } from './edge-dimensions.js';
import { type Figure, overLegend } from './figure.js';
import { place, placer, SQUARE_TO_PAGE } from './place.js';
import type { TextMeasure } from './text-measure.js';
import { FACE_WORDS, rulerOf, sizes } from './words.js';

/**
 * The one true-size drawing that every file format converts: the blank with its edges square to the page, seen from the
 * inside, dimensioned, over a legend. From (0, 0) to its size, in mm, y up.
 */
export function plate(folding: Folding, envelope: Envelope, measure: TextMeasure): Figure {
  const { blank } = folding.made;
  const reach = dimensionsReach(folding) + FIGURE;
  const lines = [...drawSeams(folding), ...drawBlank(folding, envelope), ...drawZones(folding, envelope)];
  const square = { angleDegrees: SQUARE_TO_PAGE, x: reach + blank.width / 2, y: reach + blank.height / 2 };
  const corners = cornersOnPage(blank, placer(square));
  const drawing: Drawing = [
    ...place(lines, square),
    ...blankDimensions(folding, corners, { ruler: rulerOf({ envelope, folding }), measure, scale: 1 }),
    ...FLAP_NAMES.map((flap) => cornerName(flap, corners[flap])),
  ];
  const figure = { drawing, width: blank.width + 2 * reach, height: blank.height + 2 * reach };
  const words = {
    title: envelope.title.value,
    paragraphs: [`${envelope.name}: the blank at true size. ${FACE_WORDS}`, sizes({ envelope, folding })],
  };
  return overLegend(figure, words, measure);
}
