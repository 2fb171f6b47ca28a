import { blankCorners } from '../folding/blank.js';
import { FLAP_NAMES, type FlapName, type Folding } from '../folding/folding.js';
import { otherLength, readLength, type Ruler } from '../measure/ruler.js';
import type { Point } from '../plane/point.js';
import type { Envelope, Size } from '../recipe/recipe.js';
import { blankDimensions, dimensionsReach } from './blank-dimensions.js';
import { drawBlank } from './draw-blank.js';
import { type Lettering, lettering, type Mark } from './drawing.js';
import { RISING } from './hatch.js';
import { CLEAR, FIGURE, OTHER } from './edge-dimensions.js';
import type { Figure } from './figure.js';
import { place } from './place.js';
import { CAP_HEIGHT, DESCENT, type TextMeasure } from './text-measure.js';
import { rulerOf } from './words.js';

/** Sizes on the page, in mm. */
const NAME = 3.2;
/** Between a corner and a name beside it. */
const NAME_GAP = 3;
const HATCH = 1.2;
const TICK = 1.6;

/**
 * The blank as a diamond seen from the inside, as large as a box allows, with its marks dimensioned from their corners
 * along the edges (each flap's on the edge that follows its corner counter-clockwise; both edges are alike), the edges
 * themselves, the corners' names and the face. Figures as the ruler reads them, the other system beneath.
 */
export function dimensions(folding: Folding, envelope: Envelope, box: Size, measure: TextMeasure): Figure {
  const reach = dimensionsReach(folding) / Math.SQRT2 + FIGURE;
  return diamond(folding, envelope, box, measure, reach, (corners, scale) =>
    blankDimensions(folding, corners, { ruler: rulerOf({ envelope, folding }), measure, scale }),
  );
}

/** The same without dimensions, and so larger: for a page that has its figures in a table. */
export const namedBlank = (folding: Folding, envelope: Envelope, box: Size, measure: TextMeasure): Figure =>
  diamond(folding, envelope, box, measure, 0, () => []);

/** The blank standing on its corner, with its corners' names and its face; `reach`: how far notes stand out from its edges. */
function diamond(
  folding: Folding,
  envelope: Envelope,
  box: Size,
  measure: TextMeasure,
  reach: number,
  notes: (corners: ReturnType<typeof blankCorners>, scale: number) => readonly Mark[],
): Figure {
  const { made } = folding;
  const beside = Math.max(reach, NAME_GAP + measure('bottom', NAME, 'bold'));
  const above = Math.max(reach, measure('bottom', NAME, 'bold') / 2 + CLEAR + NAME);
  const scale = Math.max(
    1e-6,
    Math.min((box.width - 2 * beside) / made.diagonal, (box.height - 2 * above) / made.diagonal),
  );
  const [width, height] = [made.diagonal * scale + 2 * beside, made.diagonal * scale + 2 * above];
  const centre = { x: width / 2, y: height / 2 };
  const corners = blankCorners({ width: made.blank.width * scale, height: made.blank.height * scale });
  const blank = drawBlank(folding, envelope, {
    hatchSpacing: HATCH / scale,
    hatchDegrees: RISING,
    markLength: TICK / scale,
  });
  const lettered = [
    ...notes(corners, scale),
    ...FLAP_NAMES.map((flap) => cornerName(flap, corners[flap], measure)),
    ...faceSize(folding, rulerOf({ envelope, folding }), scale, measure),
  ];
  return {
    drawing: [...place(blank, { scale, ...centre }), ...place(lettered, centre)],
    width,
    height,
  };
}

/**
 * A corner's name outside it. Extension lines run out of the corner at 45° to either side, so a name above or below it
 * keeps half its width off.
 */
function cornerName(flap: FlapName, corner: Point, measure: TextMeasure): Mark {
  const capitals = NAME * CAP_HEIGHT;
  const off = measure(flap, NAME, 'bold') / 2 + CLEAR;
  const places: Readonly<Record<FlapName, readonly [x: number, y: number, anchor: Lettering['anchor']]>> = {
    left: [-NAME_GAP, -capitals / 2, 'end'],
    right: [NAME_GAP, -capitals / 2, 'start'],
    seal: [0, off, 'middle'],
    bottom: [0, -off - capitals, 'middle'],
  };
  const [x, y, anchor] = places[flap];
  return lettering(flap, { x: corner.x + x, y: corner.y + y }, NAME, { anchor, weight: 'bold' });
}

/** The face's size in its middle, along its longer side; left out where not even that holds it. */
function faceSize({ made }: Folding, ruler: Ruler, scale: number, measure: TextMeasure): readonly Mark[] {
  const { width, height } = made.face;
  const sized = (read: (mm: number, ruler: Ruler) => string): string =>
    `${read(width, ruler).replace(/ [a-z]+$/, '')} × ${read(height, ruler)}`;
  const rows: readonly (readonly [string, number])[] = [
    ['face', NAME],
    [sized(readLength), FIGURE],
    [sized(otherLength), OTHER],
  ];
  const spacing = FIGURE * 1.35;
  const upright = width >= height;
  const [long, short] = [Math.max(width, height) * scale, Math.min(width, height) * scale];
  const wide = Math.max(...rows.map(([text, size]) => measure(text, size, 'bold')));
  if (wide + 2 * CLEAR > long || rows.length * spacing + 2 * CLEAR > short) return [];
  const middle = { x: made.faceCentre.x * scale, y: made.faceCentre.y * scale };
  return rows.map(([text, size], row) => {
    const down =
      (row - (rows.length - 1) / 2) * spacing + (FIGURE * (CAP_HEIGHT + DESCENT)) / 2 - FIGURE * DESCENT;
    const at = upright ? { x: middle.x, y: middle.y - down } : { x: middle.x + down, y: middle.y };
    return lettering(text, at, size, {
      anchor: 'middle',
      angleDegrees: upright ? 0 : 90,
      weight: row === 0 ? 'bold' : 'regular',
    });
  });
}
