import type { Size } from '../recipe/recipe.js';

/** How many pieces a sheet yields in plain rows, whichever way round is better. */
export function copiesOf(piece: Size, sheet: Size): number {
  const rows = ({ width, height }: Size): number =>
    Math.floor(sheet.width / width + 1e-9) * Math.floor(sheet.height / height + 1e-9);
  return Math.max(rows(piece), rows({ width: piece.height, height: piece.width }));
}
