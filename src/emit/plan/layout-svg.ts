import { place } from '../../drawing/place.js';
import type { TextMeasure } from '../../drawing/text-measure.js';
import type { Plan } from '../../plan/plan.js';
import type { Size } from '../../recipe/recipe.js';
import { counted } from '../../text/counted.js';
import { renderSvg } from '../svg/render-svg.js';
import { layoutPicture } from './layout-picture.js';
import { lengthsOf, piecesIn } from './plan-words.js';

/** The box that a picture on the screen may fill, in mm. */
const BOX: Size = { width: 180, height: 180 };

/** Clear paper about the sheet, so that its edges are drawn whole, in mm. */
const MARGIN = 2;

/** A picture for each layout, to scale, with what its file's name says of it: `kraft-1`. */
export function layoutSvgs(
  plan: Plan,
  measure: TextMeasure,
): readonly { readonly name: string; readonly text: string }[] {
  const say = lengthsOf(plan);
  return plan.papers.flatMap((paper) =>
    paper.layouts.map((layout, index) => {
      const { drawing, width, height } = layoutPicture(layout, paper, BOX, say, measure);
      const figure = {
        drawing: place(drawing, { x: MARGIN, y: MARGIN }),
        width: width + 2 * MARGIN,
        height: height + 2 * MARGIN,
      };
      const about = {
        title: `${plan.batch.title}: ${paper.paper.name}, layout ${index + 1}`,
        description: `${counted(layout.sheets, 'sheet')} of ${say.readSize(paper.sheet).read}, cut into ${piecesIn(layout, paper)}.`,
        background: true,
      };
      return { name: `${paper.paper.name}-${index + 1}`, text: renderSvg(figure, about, measure) };
    }),
  );
}
