import { dimensions } from '../../drawing/dimensions.js';
import { stepRows } from '../../drawing/step-strip.js';
import type { Size } from '../../recipe/recipe.js';
import type { EmitOptions, Emitter, Job } from '../emitter.js';
import { KINDS } from '../kinds.js';
import { POINTS_PER_MM } from '../pdf/document.js';
import { arrange } from './page/arrange.js';
import { cutSheet } from './sheet.js';
import { sheetPdf } from './sheet-pdf.js';

/** The cut sheet as pages to print and lay on the bench, with a dimensioned drawing of the blank. */
export const cutSheetPdf: Emitter = {
  ...KINDS['cut-sheet'],
  mediaType: 'application/pdf',
  emit: async (job, options) => [{ extension: '.cut-sheet.pdf', bytes: await pages(job, options) }],
};

/** The box that the drawing of the blank may fill, in mm. */
const DRAWING: Size = { width: 90, height: 90 };

function pages(job: Job, options: EmitOptions): Promise<Uint8Array> {
  const { folding, envelope } = job;
  const sheet = cutSheet(job);
  const about = { title: `${sheet.title}: cut sheet`, units: envelope.units };
  return sheetPdf(sheet, about, options, (drawn) => (page, measure) => {
    const pictures = {
      blank: dimensions(folding, envelope, DRAWING, drawn),
      fold: stepRows(folding, envelope, page.width / POINTS_PER_MM, drawn),
    };
    return arrange(sheet, pictures, page, measure);
  });
}
