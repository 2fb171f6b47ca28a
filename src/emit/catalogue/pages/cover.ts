import { paragraph } from '../../../drawing/block.js';
import type { TextMeasure } from '../../../drawing/text-measure.js';
import { printShort } from '../../../measure/number.js';
import { POINTS_PER_MM } from '../../pdf/document.js';
import type { Book } from '../book.js';
import type { Row } from '../leaf.js';
import type { Item } from '../page.js';
import { BODY, HEIGHT, WIDTH } from '../sizes.js';
import { runsOf } from '../strip.js';
import { counted } from '../../../text/counted.js';
import { inAList } from '../in-a-list.js';

/** The largest em of a title, in mm, and how far down it begins. */
const TITLES = [11, 9, 7.5, 6];
const DOWN = 22;
const LINES = 4;
const BY = 4;
const GAP = 6;

/** The side of the blank drawn at the foot, in mm, standing on its corner. */
const BLANK = 58;

/** The cover: what the book is called and whose it is, over the open blank of its first envelope. */
export function cover(book: Book, measure: TextMeasure): readonly Item[] {
  const title =
    TITLES.map((size) => paragraph(inAList(book.title), WIDTH, size, measure, 'bold')).find(
      (block) => block.drawing.length <= LINES,
    ) ?? paragraph(inAList(book.title), WIDTH, TITLES.at(-1) ?? BODY, measure, 'bold');
  const rows = book.chapters.flatMap((chapter) => chapter.rows);
  let down = HEIGHT - DOWN;
  const set = (block: ReturnType<typeof paragraph>, ink: 'full' | 'quiet' = 'full') => {
    const runs = runsOf(block, { x: 0, y: down }, measure, ink);
    down -= block.height + GAP;
    return runs;
  };
  return [
    { role: 'H1', runs: set(title) },
    ...(book.by === null
      ? []
      : [{ role: 'P' as const, runs: set(paragraph(inAList(book.by), WIDTH, BY, measure)) }]),
    ...book.note.filter(isShort).map((note) => ({
      role: 'P' as const,
      runs: set(paragraph(note, WIDTH, BODY, measure), 'quiet'),
    })),
    {
      role: 'P',
      runs: runsOf(
        paragraph(
          `${counted(rows.length, 'envelope')}, from the card to the lines to score`,
          WIDTH,
          BODY,
          measure,
        ),
        { x: 0, y: BODY },
        measure,
        'quiet',
      ),
    },
    ...(rows[0] ? [{ role: 'Artifact' as const, operators: openBlank(rows[0]), runs: [] }] : []),
  ];
}

/** Whether a note finds room on the cover; a longer one stands before the foreword. */
export const isShort = (note: string, index: number): boolean => note.length <= 240 && index < 3;

/** An open blank with its scores, in grey, standing on its bottom corner. */
function openBlank({ blank, marks }: Row): string {
  const side = BLANK;
  const scale = side / Math.max(blank.width, blank.height);
  const half = side / Math.SQRT2;
  const middle = { x: WIDTH / 2, y: 12 + half };
  /** From the blank's edges (along to the right from the bottom corner, along to the left) to the page. */
  const at = (right: number, left: number): string => {
    const x = middle.x + ((right - left) * scale) / Math.SQRT2;
    const y = middle.y - half + ((right + left) * scale) / Math.SQRT2;
    return `${printShort(x * POINTS_PER_MM, 2)} ${printShort(y * POINTS_PER_MM, 2)}`;
  };
  const { width: w, height: h } = blank;
  const line = (from: string, to: string): string => `${from} m ${to} l S`;
  const scores = [
    ...marks.bottom.map((mark) => line(at(mark, 0), at(0, mark))),
    ...marks.right.map((mark) => line(at(w - mark, 0), at(w, mark))),
    ...marks.left.map((mark) => line(at(0, h - mark), at(mark, h))),
    ...marks.seal.map((mark) => line(at(w - mark, h), at(w, h - mark))),
  ];
  return [
    '0.62 G 0.9 w',
    `${at(0, 0)} m ${at(w, 0)} l ${at(w, h)} l ${at(0, h)} l h S`,
    '0.5 w [5 3] 0 d',
    ...scores,
  ].join('\n');
}
