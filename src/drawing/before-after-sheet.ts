import { beside, stack, standing } from './block.js';
import type { Figure } from './figure.js';
import { place } from './place.js';

/** On the page, in mm: between pictures, and clear paper about all. */
const GUTTER = 8;
const MARGIN = 4;
const ABREAST = 2;

/** Some pictures in one figure, two abreast, from upper left to lower right in their order. */
export function beforeAfterSheet(figures: readonly Figure[]): Figure {
  const cell = Math.max(0, ...figures.map(({ width }) => width));
  const columns = Math.min(ABREAST, figures.length);
  const rows = Array.from({ length: Math.ceil(figures.length / ABREAST) }, (_, row) =>
    beside(
      ...figures.slice(row * ABREAST, (row + 1) * ABREAST).map(({ drawing, height }, column) => ({
        x: column * (cell + GUTTER),
        block: standing(drawing, height),
      })),
    ),
  );
  const whole = stack(GUTTER, ...rows);
  return {
    drawing: place(whole.drawing, { x: MARGIN, y: MARGIN + whole.height }),
    width: columns * cell + Math.max(0, columns - 1) * GUTTER + 2 * MARGIN,
    height: whole.height + 2 * MARGIN,
  };
}
