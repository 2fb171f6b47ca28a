import type { Box } from '../../drawing/box.js';
import type { Drawing } from '../../drawing/drawing.js';
import { place } from '../../drawing/place.js';
import type { TextMeasure } from '../../drawing/text-measure.js';
import type { Size } from '../../recipe/recipe.js';
import type { Job } from '../emitter.js';
import type { Block } from '../../drawing/block.js';
import { footer, SECTION_GAP } from './furniture.js';

/** A finished page: a drawing, and maybe a window through which a part of a larger one is seen. Both in page mm. */
export interface Page {
  readonly size: Size;
  readonly drawing: Drawing;
  readonly window: { readonly drawing: Drawing; readonly box: Box } | null;
}

export interface PageLabel {
  readonly name: string;
  readonly place: string;
}

/** What every page of one template shares. */
export interface Setting {
  readonly job: Job;
  readonly margin: number;
  readonly measure: TextMeasure;
}

/** The part of a sheet inside its margins, and what of it is left above the foot. */
export function roomAboveFoot(setting: Setting, size: Size): Box {
  const { margin } = setting;
  const width = size.width - 2 * margin;
  const foot =
    footer(setting.job, { name: 'A1', place: '' }, width, setting.measure).height + SECTION_GAP / 2;
  return { x: margin, y: margin + foot, width, height: size.height - 2 * margin - foot };
}

/** A page with its foot, blocks hanging from the top margin. */
export function composed(
  setting: Setting,
  size: Size,
  name: PageLabel,
  top: Block | null,
  window: Page['window'] = null,
): Page {
  const { job, margin, measure } = setting;
  const foot = footer(job, name, size.width - 2 * margin, measure);
  return {
    size,
    window,
    drawing: [
      ...(top ? place(top.drawing, { x: margin, y: size.height - margin }) : []),
      ...place(foot.drawing, { x: margin, y: margin + foot.height }),
    ],
  };
}

/** A page with a block above its foot: of a size, null where that is too low; or, without one, as high as it takes. */
export function holding(
  setting: Setting,
  block: Block,
  name: PageLabel,
  size: Size | null,
  width: number,
): Page | null {
  const { job, margin, measure } = setting;
  const height = block.height + SECTION_GAP + footer(job, name, width, measure).height + 2 * margin;
  if (size && height > size.height) return null;
  return composed(setting, size ?? { width: width + 2 * margin, height }, name, block);
}

/** The same sheet lying on its long side. */
export const turned = ({ width, height }: Size): Size => ({ width: height, height: width });
