import { type Block, paragraph, stack, standing } from './block.js';
import type { Drawing } from './drawing.js';
import { lineKeyBlock } from './line-key-block.js';
import { SCALE_CHECK_SIZE, scaleCheck } from './scale-check.js';
import type { TextMeasure } from './text-measure.js';

/** A legend is no narrower than its bars, and its words are set no wider than can be followed, in mm. */
export const LEGEND_WIDTH = SCALE_CHECK_SIZE.width;
const WIDEST = 170;

const TITLE = 5;
const BODY = 3.18;
const GAP = 3;
const SECTION_GAP = 6;

/** What a drawing is called, and what is said of it, a paragraph each. */
export interface LegendWords {
  readonly title: string;
  readonly paragraphs: readonly string[];
}

/** What a drawing shows, the key to its lines, and bars to measure. */
export function legend(
  { title, paragraphs }: LegendWords,
  drawing: Drawing,
  width: number,
  measure: TextMeasure,
): Block {
  const column = Math.min(width, WIDEST);
  return stack(
    SECTION_GAP,
    stack(
      GAP,
      paragraph(title, column, TITLE, measure, 'bold'),
      ...paragraphs.map((text) => paragraph(text, column, BODY, measure)),
    ),
    lineKeyBlock([drawing], column, measure),
    standing(scaleCheck(), SCALE_CHECK_SIZE.height),
  );
}
