import type { Plan } from '../../plan/plan.js';
import type { Size } from '../../recipe/recipe.js';
import { picture } from '../cut-sheet/page/picture.js';
import { setSection } from '../cut-sheet/page/set-blocks.js';
import type { Strip } from '../cut-sheet/page/strip.js';
import { sheetPdf } from '../cut-sheet/sheet-pdf.js';
import type { EmitOptions } from '../emitter.js';
import { layoutPicture } from './layout-picture.js';
import { planSheet } from './plan-sheet.js';
import { lengthsOf } from './plan-words.js';

/** The box that the picture of a layout may fill, in mm. */
const BOX: Size = { width: 130, height: 95 };

/** A plan as pages to print: its sheet, with a picture of every layout above its cuts. */
export function planPdf(plan: Plan, options: EmitOptions): Promise<Uint8Array> {
  const sheet = planSheet(plan);
  const say = lengthsOf(plan);
  const layouts = plan.papers.flatMap((paper) => paper.layouts.map((layout) => ({ layout, paper })));
  const about = { title: `${sheet.title}: plan`, units: plan.batch.units };
  return sheetPdf(sheet, about, options, (drawn) => ({ width }, measure) => {
    const pictures = layouts.map(({ layout, paper }) => layoutPicture(layout, paper, BOX, say, drawn));
    return sheet.sections.flatMap((section): readonly Strip[] => {
      const strips = setSection(section, width, measure);
      const figure = section.name === 'layout' ? pictures.shift() : undefined;
      if (section.name === 'paper') return strips.map((strip) => ({ ...strip, keepsWithNext: true }));
      if (!figure) return strips;
      const [heading, ...rest] = strips;
      return [...(heading ? [heading] : []), { ...picture(figure, 6), keepsWithNext: true }, ...below(rest)];
    });
  });
}

/** What stands under a picture, clear of it. */
const below = ([first, ...rest]: readonly Strip[]): readonly Strip[] =>
  first ? [{ ...first, above: 8 }, ...rest] : [];
