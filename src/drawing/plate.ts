import { blankCorners } from '../folding/blank.js';
import { FLAP_NAMES, type FlapName, type FlapRecord, type Folding } from '../folding/folding.js';
import type { Point } from '../plane/point.js';
import type { Envelope } from '../recipe/recipe.js';
import { blankDimensions, dimensionsReach } from './blank-dimensions.js';
import { drawBlank } from './draw-blank.js';
import { drawSeams } from './draw-seams.js';
import { drawZones } from './draw-zones.js';
import { type Drawing, type Lettering, lettering } from './drawing.js';
import { FIGURE } from './edge-dimensions.js';
import { type Figure, overLegend } from './figure.js';
import { place, placer, SQUARE_TO_PAGE } from './place.js';
import { CAP_HEIGHT, type TextMeasure } from './text-measure.js';
import { FACE_WORDS, rulerOf, sizes } from './words.js';

/**
 * The one true-size drawing that every file format converts: the blank with its edges square to the page, seen from the
 * inside, dimensioned, over a legend. From (0, 0) to its size, in mm, y up.
 */
export function plate(folding: Folding, envelope: Envelope, measure: TextMeasure): Figure {
  const { blank } = folding.made;
  const reach = dimensionsReach(folding) + FIGURE;
  const lines = [
    ...drawSeams(folding, envelope),
    ...drawBlank(folding, envelope),
    ...drawZones(folding, envelope),
  ];
  const square = { angleDegrees: SQUARE_TO_PAGE, x: reach + blank.width / 2, y: reach + blank.height / 2 };
  const corners = cornersOf(folding, placer(square));
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

function cornersOf({ made }: Folding, at: (point: Point) => Point): FlapRecord<Point> {
  const { left, right, seal, bottom } = blankCorners(made.blank);
  return { left: at(left), right: at(right), seal: at(seal), bottom: at(bottom) };
}

/** The em of a corner's name, and its distance from the extension lines beside it, in mm. */
const NAME = 3.2;
const CLEAR = 1.6;

/** A corner's name, in the quarter outside it that both of its edges leave free. */
function cornerName(flap: FlapName, corner: Point): Drawing[number] {
  const [rightwards, upwards] = QUARTERS[flap];
  const at = {
    x: corner.x + rightwards * CLEAR,
    y: corner.y + (upwards > 0 ? CLEAR : -CLEAR - NAME * CAP_HEIGHT),
  };
  const anchor: Lettering['anchor'] = rightwards > 0 ? 'start' : 'end';
  return lettering(flap, at, NAME, { anchor, weight: 'bold' }, 'dimension');
}

const QUARTERS: FlapRecord<readonly [rightwards: 1 | -1, upwards: 1 | -1]> = {
  bottom: [-1, -1],
  right: [1, -1],
  seal: [1, 1],
  left: [-1, 1],
};
