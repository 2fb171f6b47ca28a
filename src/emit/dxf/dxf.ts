/*
 * emit/dxf/: the true-size drawing for cutting machines and drawing programs.
 * In: one compiled recipe. Out: DXF as of R2007 (AC1021): UTF-8, one drawing unit is one mm.
 * Refuses to know: what is drawn. The DXF library is imported here alone, and only once a file is wanted.
 */
import type { Figure } from '../../drawing/figure.js';
import { liningPlate } from '../../drawing/lining-plate.js';
import { plate } from '../../drawing/plate.js';
import type { EmitOptions, Emitter, Job, Output } from '../emitter.js';
import { KINDS } from '../kinds.js';
import { fontMeasure } from '../font-measure.js';
import { renderDxf } from './render-dxf.js';

export const dxf: Emitter = {
  ...KINDS.dxf,
  mediaType: 'image/vnd.dxf',
  emit: write,
};

async function write({ folding, envelope }: Job, options: EmitOptions): Promise<readonly Output[]> {
  const measure = await fontMeasure(options);
  const figures: readonly (readonly [extension: string, figure: Figure | null])[] = [
    ['.dxf', plate(folding, envelope, measure)],
    ['.lining.dxf', liningPlate(folding, envelope, measure)],
  ];
  const outputs = figures.map(
    async ([extension, figure]): Promise<readonly Output[]> =>
      figure ? [{ extension, bytes: new TextEncoder().encode(await renderDxf(figure, measure)) }] : [],
  );
  return (await Promise.all(outputs)).flat();
}
