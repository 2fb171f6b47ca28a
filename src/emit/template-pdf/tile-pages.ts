import { type Box, segmentsOf, touches } from '../../drawing/box.js';
import type { Drawing, Mark } from '../../drawing/drawing.js';
import { place } from '../../drawing/place.js';
import { tile, type Tiling } from '../../drawing/tile.js';
import type { Size } from '../../recipe/recipe.js';
import { composed, type Page, type PageLabel, roomAboveFoot, type Setting, turned } from './page.js';

/** Lines at a drawing's edge are drawn half outside it; they are shown whole, in mm. */
export const EDGE = 0.5;

/** A drawing over sheets of one size. */
export interface Laid {
  readonly size: Size;
  readonly tiling: Tiling;
}

/** Lays a drawing over as few sheets as it needs: upright, or lying where that takes fewer. */
export function laidOut(setting: Setting, drawing: Drawing, content: Box, upright: Size): Laid {
  const on = (size: Size): Laid => ({ size, tiling: tile(drawing, content, roomAboveFoot(setting, size)) });
  const [standing, lying] = [on(upright), on(turned(upright))];
  return lying.tiling.tiles.length < standing.tiling.tiles.length ? lying : standing;
}

/** What pages are called: the only one, or `part` and the place of each in the whole. */
export interface TileNames {
  readonly whole: PageLabel;
  readonly part: string;
}

/** The pages of a drawing laid over sheets. */
export const tilePages = (
  setting: Setting,
  drawing: Drawing,
  { size, tiling }: Laid,
  names: TileNames,
): readonly Page[] =>
  tiling.tiles.map(({ row, column, name, window, joins }) => {
    const box = roomAboveFoot(setting, size);
    const shift = { x: box.x - window.x, y: box.y - window.y };
    const label =
      tiling.rows * tiling.columns === 1
        ? names.whole
        : {
            name: names.part + name,
            place: `row ${row + 1} of ${tiling.rows}, column ${column + 1} of ${tiling.columns}`,
          };
    return composed(setting, size, label, null, {
      box: { ...box },
      drawing: place([...drawing, ...joins].filter(seenIn(window, setting)), shift),
    });
  });

/** Whether any of a mark shows in a window. */
const seenIn =
  (window: Box, { measure }: Setting) =>
  ({ shape }: Mark): boolean => {
    if (shape.kind !== 'text') return touches(segmentsOf(shape), grown(window, EDGE));
    const { at, text, size, weight } = shape;
    const { x, y, width, height } = grown(window, measure(text, size, weight));
    return at.x >= x && at.x <= x + width && at.y >= y && at.y <= y + height;
  };

const grown = ({ x, y, width, height }: Box, by: number): Box => ({
  x: x - by,
  y: y - by,
  width: width + 2 * by,
  height: height + 2 * by,
});
