import { stages } from '../drawing/stages/stages.js';
import { stepStrip } from '../drawing/step-strip.js';
import type { EmitOptions, Emitter, Job } from './emitter.js';
import { KINDS } from './kinds.js';
import { fontMeasure } from './font-measure.js';
import { renderSvg } from './svg/render-svg.js';

/** The fold as a strip of pictures, for a page or a screen. */
export const steps: Emitter = {
  ...KINDS.steps,
  mediaType: 'image/svg+xml',
  emit: async (job, options) => [{ extension: '.steps.svg', bytes: await strip(job, options) }],
};

/** Fits a printed page, in mm. */
const WIDTH = 180;

async function strip({ folding, envelope }: Job, options: EmitOptions): Promise<Uint8Array> {
  const measure = await fontMeasure(options);
  const words = stages(folding, envelope).map(({ caption }, index) => `${index + 1}. ${caption}`);
  const svg = renderSvg(
    stepStrip(folding, envelope, WIDTH, measure),
    {
      title: `${envelope.title.value}: the fold, step by step`,
      description: words.join(' '),
      background: true,
    },
    measure,
  );
  return new TextEncoder().encode(svg);
}
