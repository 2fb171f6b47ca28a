/*
 * emit/template-pdf/: the blank at true size on paper that a printer takes, with an edge gauge.
 * In: one compiled recipe and a page size. Out: a PDF: all on one page, or a page about the others, the blank over
 * overlapping pages, and the gauge.
 * Refuses to know: how PDF is written (emit/pdf), and any decision about the envelope.
 */
import { drawBlank } from '../../drawing/draw-blank.js';
import { flapNames } from '../../drawing/flap-names.js';
import { place, SQUARE_TO_PAGE } from '../../drawing/place.js';
import type { Size } from '../../recipe/recipe.js';
import type { EmitOptions, Emitter, Job } from '../emitter.js';
import { KINDS } from '../kinds.js';
import { paperSize, WIDEST_MARGIN } from '../paper-size.js';
import { LONGEST_PAGE, openDocument } from '../pdf/document.js';
import { paint, paintWithin } from '../pdf/paint.js';
import { liningPages } from './lining-pages.js';
import { onePage } from './one-page.js';
import { type Page, type Setting, turned } from './page.js';
import { tiledPages } from './tiled-pages.js';

export const template: Emitter = {
  ...KINDS.template,
  mediaType: 'application/pdf',
  emit: async (job, options) => [{ extension: '.template.pdf', bytes: await write(job, options) }],
};

async function write(job: Job, options: EmitOptions): Promise<Uint8Array> {
  const document = await openDocument(options, {
    title: `${job.envelope.title.value}: template at true size`,
  });
  const setting: Setting = {
    job,
    margin: Math.min(options.margin, WIDEST_MARGIN),
    measure: document.measure,
  };
  for (const { size, drawing, window } of pages(setting, options)) {
    document.addPage(size);
    if (window) paintWithin(document, window.drawing, window.box);
    paint(document, drawing);
  }
  return document.finish();
}

/** The blank, then the lining where there is one. */
function pages(setting: Setting, options: EmitOptions): readonly Page[] {
  const sheet = options.page === 'fit' ? null : paperSize(options.page, setting.job.envelope.units);
  return [...blankPages(setting, sheet), ...liningPages(setting, sheet)];
}

/** All on one page where that is asked for or fits; else spread over pages of the printer's size. */
function blankPages(setting: Setting, sheet: Size | null): readonly Page[] {
  const { folding, envelope } = setting.job;
  const lines = drawBlank(folding, envelope);
  const names = flapNames(folding, lines, setting.measure);
  const blank = place([...lines, ...names], { angleDegrees: SQUARE_TO_PAGE });
  for (const size of sheet ? [sheet, turned(sheet)] : [null]) {
    const one = onePage(setting, blank, size);
    if (one && one.size.width <= LONGEST_PAGE && one.size.height <= LONGEST_PAGE) return [one];
  }
  const spread = sheet ?? { width: LONGEST_PAGE, height: LONGEST_PAGE };
  return tiledPages(setting, blank, spread);
}
