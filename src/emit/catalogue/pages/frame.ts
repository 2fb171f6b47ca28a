import { lettering } from '../../../drawing/drawing.js';
import type { TextMeasure } from '../../../drawing/text-measure.js';
import type { Size } from '../../../recipe/recipe.js';
import { POINTS_PER_MM } from '../../pdf/document.js';
import { operatorsOf } from '../../pdf/operators.js';
import type { BookPage, Item } from '../page.js';
import { HEIGHT, SMALL, WIDTH } from '../sizes.js';
import { inAList } from '../in-a-list.js';

/** Clear of the page's edges, in mm, at least: beside the text, and above and below it with head and number. */
const BESIDE = 12;
const ABOVE = 16;
/** The inner margin is wider than the outer by twice this part of what is beside the text. */
const INWARDS = 0.12;
/** From the text to the running head, and to the number, in mm of the text's own scale. */
const HEAD_GAP = 4.2;
const NUMBER_GAP = 8;

/** A page of a book around what is set on it. */
export type Frame = (items: readonly Item[], number: number, head: string) => BookPage;

/** Sets the text box onto pages of a size (mm): as large as their margins let it be, a little outwards of the middle. */
export function frameFor(page: Size, measure: TextMeasure): Frame {
  const scale = Math.min((page.width - 2 * BESIDE) / WIDTH, (page.height - 2 * ABOVE) / HEIGHT);
  const beside = page.width - WIDTH * scale;
  const bottom = (page.height - HEIGHT * scale) / 2;
  return (items, number, head) => {
    const right = number % 2 === 1;
    const left = beside * (right ? 0.5 + INWARDS / 2 : 0.5 - INWARDS / 2);
    return {
      groups: [
        {
          x: left * POINTS_PER_MM,
          y: bottom * POINTS_PER_MM,
          scale,
          items: [...items, furniture(number, head, right, measure)],
        },
      ],
    };
  };
}

/** The number outside at the foot, the head outside at the top. */
function furniture(number: number, head: string, right: boolean, measure: TextMeasure): Item {
  const outside = right
    ? { x: WIDTH, how: { anchor: 'end' as const } }
    : { x: 0, how: { anchor: 'start' as const } };
  const { runs } = operatorsOf(
    [
      lettering(`${number}`, { x: outside.x, y: -NUMBER_GAP }, SMALL, outside.how),
      ...(head === ''
        ? []
        : [lettering(inAList(head), { x: outside.x, y: HEIGHT + HEAD_GAP }, SMALL, outside.how)]),
    ],
    measure,
  );
  return { role: 'Artifact', operators: '', runs: runs.map((run) => ({ ...run, ink: 'quiet' })) };
}
