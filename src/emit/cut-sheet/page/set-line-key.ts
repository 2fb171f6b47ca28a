import type { Drawing } from '../../../drawing/drawing.js';
import { lineKey } from '../../../drawing/line-key.js';
import { setText } from './set-blocks.js';
import type { Strip } from './strip.js';
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
        ...(line === 0
          ? [{ kind: 'sample' as const, x: 0, y: 2.5, width: SAMPLE, height: KEY.leading - 4, layer }]
          : []),
        ...strip.items.map((item) => ({ ...item, x: item.x + SAMPLE + GAP })),
      ],
    })),
  );
}
