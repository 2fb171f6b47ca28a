import type { Figure } from '../../drawing/figure.js';
import { liningPlate } from '../../drawing/lining-plate.js';
import { plate } from '../../drawing/plate.js';
import type { EmitOptions, Emitter, Job, Output } from '../emitter.js';
import { KINDS } from '../kinds.js';
import { fontMeasure } from '../font-measure.js';
import { describeBlank, describeLining } from './descriptions.js';
import { type About, renderSvg } from './render-svg.js';

/** The true-size drawing for cutting machines, drawing programs and web pages. */
export const svg: Emitter = {
  ...KINDS.svg,
  mediaType: 'image/svg+xml',
  emit: write,
};

/** A file's ending, what it shows (null: nothing of the kind), and the words about it. */
type Picture = readonly [extension: string, figure: Figure | null, about: About];

async function write(job: Job, options: EmitOptions): Promise<readonly Output[]> {
  const { folding, envelope } = job;
  const measure = await fontMeasure(options);
  const title = envelope.title.value;
  const pictures: readonly Picture[] = [
    ['.svg', plate(folding, envelope, measure), { title, description: describeBlank(job) }],
    [
      '.lining.svg',
      liningPlate(folding, envelope, measure),
      { title: `${title}: lining`, description: describeLining(job) },
    ],
  ];
  return pictures.flatMap(([extension, figure, about]) =>
    figure ? [{ extension, bytes: new TextEncoder().encode(renderSvg(figure, about, measure)) }] : [],
  );
}
