import { stack, standing } from '../../drawing/block.js';
import { type LiningFigure, liningFigure } from '../../drawing/lining-plate.js';
import type { Size } from '../../recipe/recipe.js';
import { body, captioned, key, SECTION_GAP } from './furniture.js';
import { holding, type Page, type Setting, turned } from './page.js';
import { laidOut, tilePages } from './tile-pages.js';

/** A page is no narrower than its foot, in mm. */
const NARROWEST = 150;

const WHOLE = { name: 'Lining', place: 'at true size' };

/** The lining at true size, on a sheet of its own or over several; none where the envelope has none. */
export function liningPages(setting: Setting, upright: Size | null): readonly Page[] {
  const { folding, envelope } = setting.job;
  const figure = liningFigure(folding, envelope, setting.measure);
  if (!figure) return [];
  for (const size of upright ? [upright, turned(upright)] : [null]) {
    const page = onOne(setting, figure, size);
    if (page) return [page];
  }
  const content = { x: 0, y: 0, width: figure.width, height: figure.height };
  const laid = laidOut(setting, figure.drawing, content, upright as Size);
  return tilePages(setting, figure.drawing, laid, { whole: WHOLE, part: 'Lining ' });
}

/** With what is said of it and the key, where a sheet holds all that; `size` null: as large as that takes. */
function onOne(setting: Setting, figure: LiningFigure, size: Size | null): Page | null {
  const { margin, measure } = setting;
  const width = size ? size.width - 2 * margin : Math.max(figure.width, NARROWEST);
  if (width < Math.max(figure.width, NARROWEST)) return null;
  const block = stack(
    SECTION_GAP,
    captioned(figure.words.title, body(figure.words.paragraphs.join(' '), width, measure), width, measure),
    standing(figure.drawing, figure.height),
    key([figure.drawing], width, measure),
  );
  return holding(setting, block, WHOLE, size, width);
}
