import type { Drawing, Layer } from '../../../drawing/drawing.js';
import { lineKey } from '../../../drawing/line-key.js';
import { lineSample } from '../../../drawing/line-sample.js';
import { POINTS_PER_MM } from '../../pdf/document.js';
import { setText } from './set-blocks.js';
import type { Item, Strip } from './strip.js';
import { KEY, type Measure } from './type.js';

/** Length of a line's sample, and the space between it and its words. */
const SAMPLE = 26;
const GAP = 8;

/** What the drawing's kinds of line mean, each beside a sample. */
export function setLineKey(drawing: Drawing, width: number, measure: Measure): readonly Strip[] {
  return lineKey(drawing).flatMap(({ layer, words }, row) =>
    setText(words, width - SAMPLE - GAP, KEY, measure, row === 0 ? 9 : 0).map((strip, line) => ({
      ...strip,
      keepsWithNext: false,
      items: [
        ...(line === 0 ? [sample(layer)] : []),
        ...strip.items.map((item) => ({ ...item, x: item.x + SAMPLE + GAP })),
      ],
    })),
  );
}

function sample(layer: Layer): Item {
  const height = KEY.leading - 4;
  const size = { width: SAMPLE / POINTS_PER_MM, height: height / POINTS_PER_MM };
  return { kind: 'picture', x: 0, y: 2.5, height, drawing: lineSample(layer, size) };
}
