import type { Folding } from '../folding/folding.js';
import { readSizes } from '../measure/read-sizes.js';
import { flatten } from '../plane/path.js';
import { bounds } from '../plane/polygon.js';
import type { Envelope } from '../recipe/recipe.js';
import { type Drawing, line, path } from './drawing.js';
import { edgeDimensions, EXTENSION_GAP, FIGURE, inBothSystems, LEVEL } from './edge-dimensions.js';
import { type Figure, overLegend } from './figure.js';
import type { LegendWords } from './legend.js';
import { place } from './place.js';
import type { TextMeasure } from './text-measure.js';
import { rulerOf } from './words.js';

/** A lining's figure, and what is said of it. */
export interface LiningFigure extends Figure {
  readonly words: LegendWords;
}

/** The lining's figure over a legend: a drawing of its own, like `plate`. Null where the envelope has none. */
export function liningPlate(folding: Folding, envelope: Envelope, measure: TextMeasure): Figure | null {
  const figure = liningFigure(folding, envelope, measure);
  return figure && overLegend(figure, figure.words, measure);
}

/**
 * A lining at true size: its outline, where it folds, its width, and from its foot the heights of its folds and of its tip.
 * The side that is seen lies up, the flap's tip is on top. Null where the envelope has none.
 */
export function liningFigure(
  folding: Folding,
  envelope: Envelope,
  measure: TextMeasure,
): LiningFigure | null {
  const { liner } = folding;
  if (!liner) return null;
  const { min, max } = bounds(flatten(liner.outline));
  const size = { width: max.x - min.x, height: max.y - min.y };
  const lines: Drawing = [
    ...liner.folds.map(({ from, to }) => line('lining-fold', from, to)),
    path('lining', liner.outline, envelope.liner.origin.span),
  ];
  const heights = [...liner.folds.map(({ from }) => from.y - min.y), size.height].sort((a, b) => a - b);
  const ruler = rulerOf({ envelope, folding });
  const measures = { ruler, measure, scale: 1 };
  const reach = LEVEL * heights.length + EXTENSION_GAP + FIGURE;
  const [left, right] = [
    { x: 0, y: 0 },
    { x: size.width, y: 0 },
  ];
  const drawing: Drawing = [
    ...place(lines, { x: -min.x, y: -min.y }),
    ...edgeDimensions(left, right, inBothSystems([size.width], ruler), measures),
    ...edgeDimensions(right, { x: size.width, y: size.height }, inBothSystems(heights, ruler), measures),
  ];
  return {
    drawing: place(drawing, { x: reach, y: reach }),
    width: size.width + 2 * reach,
    height: size.height + reach + FIGURE,
    words: {
      title: `${envelope.title.value}: lining`,
      paragraphs: [
        `${envelope.name}: the lining at true size, ${readSizes(size, ruler)}. It shows the side that is seen.`,
        'Glue it to the seal flap only, never across the hinge, and leave the flap’s own strips of glue free.',
      ],
    },
  };
}
