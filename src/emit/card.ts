import { summaryCard } from '../drawing/summary-card.js';
import { FACE_WORDS, sizes } from '../drawing/words.js';
import type { EmitOptions, Emitter, Job } from './emitter.js';
import { KINDS } from './kinds.js';
import { fontMeasure } from './font-measure.js';
import { renderSvg } from './svg/render-svg.js';

/** One small picture of an envelope, for a list of recipes or a page about one. */
export const card: Emitter = {
  ...KINDS.card,
  mediaType: 'image/svg+xml',
  emit: async (job, options) => [{ extension: '.card.svg', bytes: await picture(job, options) }],
};

async function picture(job: Job, options: EmitOptions): Promise<Uint8Array> {
  const measure = await fontMeasure(options);
  const description = `The open blank, and the closed envelope from the back and the front. ${FACE_WORDS} ${sizes(job)}`;
  const about = { title: job.envelope.title.value, description, background: true };
  return new TextEncoder().encode(renderSvg(summaryCard(job, measure), about, measure));
}
