import { type Drawing, lettering, rectangle } from '../../drawing/drawing.js';
import { place } from '../../drawing/place.js';
import { CAP_HEIGHT } from '../../drawing/text-measure.js';
import { OVERLAP, rowName, type Tiling } from '../../drawing/tile.js';
import type { Size } from '../../recipe/recipe.js';
import { type Block, standing } from '../../drawing/block.js';

const FIGURE = 3.53;
/** Room for the letters of the rows and the numbers of the columns. */
const HEADS = 6;

/** How the pages lie together, drawn to scale inside a box: rows lettered, columns numbered. */
export function plan(tiling: Tiling, blank: Drawing, box: Size): Block {
  const [first] = tiling.tiles;
  if (!first) return { drawing: [], height: 0 };
  const { width, height } = first.window;
  const total = (count: number, side: number): number => count * side - (count - 1) * OVERLAP;
  const all = { width: total(tiling.columns, width), height: total(tiling.rows, height) };
  const scale = Math.min((box.width - HEADS) / all.width, (box.height - HEADS) / all.height);
  const left = first.window.x - first.column * (width - OVERLAP);
  const top = first.window.y + height + first.row * (height - OVERLAP);
  const high = all.height * scale;
  const at = (index: number, side: number): number => (index * (side - OVERLAP) + side / 2) * scale;
  const heads = [
    ...Array.from({ length: tiling.columns }, (_, column) =>
      lettering(`${column + 1}`, { x: HEADS + at(column, width), y: high + 2.5 }, FIGURE, {
        anchor: 'middle',
        weight: 'bold',
      }),
    ),
    ...Array.from({ length: tiling.rows }, (_, row) =>
      lettering(rowName(row), { x: 0, y: high - at(row, height) - (FIGURE * CAP_HEIGHT) / 2 }, FIGURE, {
        weight: 'bold',
      }),
    ),
  ];
  const pages = tiling.tiles.map(({ window }) => rectangle('page', window.x, window.y, width, height));
  const scaled = place([...pages, ...blank], { scale, x: HEADS - left * scale, y: high - top * scale });
  return standing([...scaled, ...heads], high + 2.5 + FIGURE * CAP_HEIGHT);
}
