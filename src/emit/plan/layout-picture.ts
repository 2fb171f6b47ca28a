import { layoutFigure } from '../../drawing/layout-figure.js';
import type { Figure } from '../../drawing/figure.js';
import type { TextMeasure } from '../../drawing/text-measure.js';
import { placed } from '../../plan/layout/placed.js';
import type { PlannedLayout, PlannedPaper } from '../../plan/plan.js';
import type { Size } from '../../recipe/recipe.js';
import type { Lengths } from '../cut-sheet/lengths.js';

/** A sheet as it is cut up, in a box (mm): each piece with its name and size. */
export const layoutPicture = (
  { layout }: PlannedLayout,
  { sheet, pieces }: PlannedPaper,
  box: Size,
  say: Lengths,
  measure: TextMeasure,
): Figure =>
  layoutFigure(
    sheet,
    placed(layout, sheet).map(({ is, ...part }) => ({
      ...part,
      words: is.kind === 'rest' ? null : [...(pieces[is.of]?.names ?? []), say.readSize(part).read],
    })),
    box,
    measure,
  );
