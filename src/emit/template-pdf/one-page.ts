import type { Drawing } from '../../drawing/drawing.js';
import { FLAP_NAMES } from '../../folding/folding.js';
import { place } from '../../drawing/place.js';
import type { Size } from '../../recipe/recipe.js';
import { beside, stack, standing } from '../../drawing/block.js';
import { heading, key, notes, SECTION_GAP } from './furniture.js';
import { wholeGauge } from './gauge-pages.js';
import { holding, type Page, type Setting } from './page.js';

/** Room about the blank for the ends of its marks, in mm. */
const AROUND = 4;
/** The words under the blank are set in two columns that together are no wider than this. */
const WIDEST = 190;
const COLUMN_GAP = 8;

/** Everything on one sheet: the blank, the key, the notes, the gauge, the bars. `size` null: as large as that takes. */
export function onePage(setting: Setting, blank: Drawing, size: Size | null): Page | null {
  const { job, margin, measure } = setting;
  const { made } = job.folding;
  const { width, height } = made.blank;
  const longestMark = Math.max(...FLAP_NAMES.map((flap) => made.first[flap].alongEdge));
  const inner = size
    ? size.width - 2 * margin
    : Math.max(width + 2 * AROUND, longestMark + 2 * AROUND, WIDEST);
  if (inner < Math.max(width + 2 * AROUND, 150)) return null;
  const gauge = wholeGauge(setting, inner);
  if (!gauge) return null;
  const column = (Math.min(inner, WIDEST) - COLUMN_GAP) / 2;
  const whole = stack(
    SECTION_GAP,
    heading(job, inner, measure),
    standing(place(blank, { x: inner / 2, y: height / 2 + AROUND }), height + 2 * AROUND),
    beside(
      { x: 0, block: key([blank], column, measure) },
      { x: column + COLUMN_GAP, block: notes(false, column, measure) },
    ),
    gauge,
  );
  return holding(setting, whole, { name: 'Template', place: 'all on one page' }, size, inner);
}
