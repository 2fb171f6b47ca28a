import type { Changed, Consequence, Difference } from '../../diff/difference.js';
import { beforeAfter } from '../../drawing/before-after.js';
import { beforeAfterSheet } from '../../drawing/before-after-sheet.js';
import type { Figure } from '../../drawing/figure.js';
import { fontMeasure } from '../../emit/font-measure.js';
import { renderSvg } from '../../emit/svg/render-svg.js';
import type { Host } from '../../host/host.js';
import { FIXED_DAY } from '../stamp-date.js';

/** What changes on paper as pictures, each an SVG of what was over what is. */
export interface ChangePictures {
  /** By the newer names of the envelopes that are cut or scored otherwise. */
  readonly each: ReadonlyMap<string, string>;
  /** All of them in one; null where there are none. */
  readonly all: string | null;
}

export async function changePictures({ changes }: Difference, host: Host): Promise<ChangePictures> {
  const measure = await fontMeasure({ date: FIXED_DAY, fonts: host.fonts() });
  const drawn = changes
    .filter(isDrawnOtherwise)
    .map(({ name, before, after }) => ({ name, figure: beforeAfter(before, after, measure) }));
  const svg = (figure: Figure, names: string): string => renderSvg(figure, about(names), measure);
  return {
    each: new Map(drawn.map(({ name, figure }) => [name, svg(figure, name)])),
    all:
      drawn.length === 0
        ? null
        : svg(beforeAfterSheet(drawn.map(({ figure }) => figure)), drawn.map(({ name }) => name).join(', ')),
  };
}

/** What a picture of the open blank shows. */
const SHOWN: ReadonlySet<Consequence> = new Set(['recut', 'rescore', 'retrim']);

const isDrawnOtherwise = (change: Difference['changes'][number]): change is Changed =>
  change.kind === 'changed' && change.consequences.some((each) => SHOWN.has(each));

const about = (names: string) => ({
  title: `${names}: before and after`,
  description: 'The blank as it is, seen from the inside, over what it was, narrow and dashed.',
  background: true,
});
