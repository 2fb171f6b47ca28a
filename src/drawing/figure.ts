import type { Size } from '../recipe/recipe.js';
import { stack, standing } from './block.js';
import type { Drawing } from './drawing.js';
import { legend, LEGEND_WIDTH, type LegendWords } from './legend.js';
import { place } from './place.js';
import type { TextMeasure } from './text-measure.js';

/** A drawing with its box: from (0, 0) to (width, height), in mm on the page, y up. */
export interface Figure extends Size {
  readonly drawing: Drawing;
}

/** Between a drawing and the legend beneath it, and clear paper about both, so that lines are drawn whole; in mm. */
const GAP = 6;
const MARGIN = 3;

/** A figure, centred over a legend that explains its lines, with a margin about both. */
export function overLegend(figure: Figure, words: LegendWords, measure: TextMeasure): Figure {
  const width = Math.max(figure.width, LEGEND_WIDTH);
  const whole = stack(
    GAP,
    standing(place(figure.drawing, { x: (width - figure.width) / 2 }), figure.height),
    legend(words, figure.drawing, width, measure),
  );
  return {
    drawing: place(whole.drawing, { x: MARGIN, y: MARGIN + whole.height }),
    width: width + 2 * MARGIN,
    height: whole.height + 2 * MARGIN,
  };
}
