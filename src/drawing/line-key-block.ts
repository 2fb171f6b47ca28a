import { type Block, indented, paragraph, stack } from './block.js';
import type { Drawing } from './drawing.js';
import { lineKey } from './line-key.js';
import { lineSample } from './line-sample.js';
import { place } from './place.js';
import { CAP_HEIGHT, type TextMeasure } from './text-measure.js';

/** The em, and the space between samples and words and from row to row, in mm. */
const BODY = 3.18;
const GAP = 3;
const SAMPLE = { width: 22, height: 2.8 };

/** What each kind of line in some drawings means, each beside a sample. */
export const lineKeyBlock = (drawings: readonly Drawing[], width: number, measure: TextMeasure): Block =>
  stack(
    GAP,
    ...lineKey(...drawings).map(({ layer, words }): Block => {
      const beyond = SAMPLE.width + GAP;
      const text = indented(paragraph(words, width - beyond, BODY, measure), beyond);
      const sample = place(lineSample(layer, SAMPLE), { y: -(BODY * CAP_HEIGHT + SAMPLE.height) / 2 });
      return { drawing: [...text.drawing, ...sample], height: text.height };
    }),
  );
