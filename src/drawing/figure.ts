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

/** Between a drawing and the legend beneath it, in mm. */
const GAP = 6;

/** A figure, centred over a legend that explains its lines. */
export function overLegend(figure: Figure, words: LegendWords, measure: TextMeasure): Figure {
  const width = Math.max(figure.width, LEGEND_WIDTH);
  const whole = stack(
    GAP,
    standing(place(figure.drawing, { x: (width - figure.width) / 2 }), figure.height),
    legend(words, figure.drawing, width, measure),
  );
  return { drawing: place(whole.drawing, { y: whole.height }), width, height: whole.height };
}
