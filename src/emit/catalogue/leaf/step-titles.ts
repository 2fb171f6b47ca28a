import { paragraph } from '../../../drawing/block.js';
import type { TextMeasure } from '../../../drawing/text-measure.js';
import type { Step } from '../../cut-sheet/content.js';
import { BODY, WIDTH } from '../sizes.js';
import { runsOf, type Strip } from '../strip.js';

const COLUMNS = 3;
const GUTTER = 4;
const NUMBER = 5;
const ROW_GAP = 0.8;

/** The work in order, in columns read downwards: the names of its steps. Their words are on the cut sheet. */
export function stepTitles(steps: readonly Step[], measure: TextMeasure): Strip {
  const column = (WIDTH + GUTTER) / COLUMNS - GUTTER;
  const rows = Math.ceil(steps.length / COLUMNS);
  const blocks = steps.map(({ title }) => paragraph(title, column - NUMBER, BODY, measure));
  const pitch = Math.max(...blocks.map(({ height }) => height)) + ROW_GAP;
  return {
    height: rows * pitch - ROW_GAP,
    items: ({ x, y }) => [
      {
        role: 'L',
        items: blocks.map((block, index) => {
          const at = { x: x + Math.floor(index / rows) * (column + GUTTER), y: y - (index % rows) * pitch };
          const number = paragraph(`${index + 1}`, NUMBER, BODY, measure, 'bold');
          return {
            label: { runs: runsOf(number, at, measure) },
            body: { runs: runsOf(block, { x: at.x + NUMBER, y: at.y }, measure) },
          };
        }),
      },
    ],
  };
}
