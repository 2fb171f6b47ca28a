import { lettering } from '../../../drawing/drawing.js';
import { paragraph } from '../../../drawing/block.js';
import { CAP_HEIGHT, type TextMeasure } from '../../../drawing/text-measure.js';
import { printShort } from '../../../measure/number.js';
import { POINTS_PER_MM } from '../../pdf/document.js';
import { operatorsOf } from '../../pdf/operators.js';
import { recipeDestination } from '../destinations.js';
import type { Row } from '../leaf.js';
import { BODY, WIDTH } from '../sizes.js';
import { runsOf, type Strip } from '../strip.js';
import type { PageOf } from './part.js';
import { inAList } from '../in-a-list.js';

/** Kept free for a page number, in mm, and between a name and the dots that lead to it. */
const NUMBER = 8;
const DOTS_GAP = 1.6;
const DOT_PITCH = 1.8;

const ABOVE_ENTRY = 1.3;

/** Lines of a list that lead to recipes: title, dots, page. */
export const entriesFor =
  (measure: TextMeasure, pageOf: PageOf, width: number = WIDTH) =>
  (row: Row): Strip => {
    const title = paragraph(inAList(row.title), width - NUMBER - DOTS_GAP, BODY, measure);
    return {
      height: title.height,
      above: ABOVE_ENTRY,
      items: ({ x, y }) => {
        const runs = runsOf(title, { x, y }, measure);
        const last = runs.at(-1);
        const baseline = last ? last.y / POINTS_PER_MM : y - BODY * CAP_HEIGHT;
        const end = last ? last.x / POINTS_PER_MM + measure(last.text, BODY, 'regular') : x;
        const number = lettering(`${pageOf(row)}`, { x: x + width, y: baseline }, BODY, { anchor: 'end' });
        const dots = dotted(end + DOTS_GAP, x + width - NUMBER, x + width, baseline);
        return [
          {
            role: 'TOC',
            items: [{ runs: [...runs, ...operatorsOf([number], measure).runs], to: recipeDestination(row) }],
          },
          { role: 'Artifact', operators: dots, runs: [] },
        ];
      },
    };
  };

/** Dots that stand below each other on every line: a dotted line drawn from the right, so that its dots are in step. */
function dotted(from: number, to: number, right: number, y: number): string {
  const [first, last] = [from, to].map(
    (end) => right - Math.floor((right - end) / DOT_PITCH) * DOT_PITCH,
  ) as [number, number];
  if (last <= first) return '';
  const at = (x: number): string => `${printShort(x * POINTS_PER_MM, 2)} ${printShort(y * POINTS_PER_MM, 2)}`;
  return `0.35 G 0.8 w 1 J [0 ${printShort(DOT_PITCH * POINTS_PER_MM, 3)}] 0 d ${at(last)} m ${at(first)} l S`;
}
