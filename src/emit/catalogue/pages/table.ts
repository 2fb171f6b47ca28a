import { beside, type Block, paragraph, stack } from '../../../drawing/block.js';
import type { TextMeasure } from '../../../drawing/text-measure.js';
import { sameLength } from '../../../measure/slack.js';
import type { Reading } from '../../cut-sheet/content.js';
import { lengths } from '../../cut-sheet/lengths.js';
import { typeset } from '../../cut-sheet/page/type.js';
import { recipeDestination } from '../destinations.js';
import type { Row } from '../leaf.js';
import { SMALL } from '../sizes.js';
import { runsOf, type Strip } from '../strip.js';
import type { PageOf, Part } from './part.js';

/** A line of a cell; `quiet` is the other system, or an aside. */
interface Line {
  readonly text: string;
  readonly quiet?: boolean;
}

interface Column {
  readonly heading: string;
  /** In mm, the gap to the next one included. */
  readonly width: number;
  readonly lines: (row: Row, pageOf: PageOf) => readonly Line[];
}

const both = ({ read, other }: Reading): readonly Line[] => [{ text: read }, { text: other, quiet: true }];

const say = ({ units, step }: Row) => lengths({ units, step });

const marks = (row: Row, at: readonly number[]): readonly Line[] =>
  at.flatMap((mark) => both(say(row).read(mark)));

/** The table's columns, together as wide as a page's text. */
const COLUMNS: readonly Column[] = [
  {
    heading: 'Envelope',
    width: 27,
    lines: ({ title, paper }) => [
      { text: title },
      ...(paper ? [{ text: yieldWords(paper), quiet: true }] : []),
    ],
  },
  { heading: 'Card', width: 23, lines: (row) => both(say(row).readSize(row.card)) },
  {
    heading: 'Blank',
    width: 14.5,
    lines: (row) =>
      both(
        sameLength(row.blank.width, row.blank.height)
          ? say(row).read(row.blank.width)
          : say(row).readSize(row.blank),
      ),
  },
  { heading: 'Sides', width: 12.5, lines: (row) => sideMarks(row) },
  { heading: 'Seal', width: 12.5, lines: (row) => marks(row, row.marks.seal) },
  { heading: 'Bottom', width: 12.5, lines: (row) => marks(row, row.marks.bottom) },
  {
    heading: 'Depth',
    width: 9,
    lines: (row) => (row.depth > 0 ? both(say(row).exact(row.depth)) : [{ text: 'flat' }]),
  },
  { heading: 'Page', width: 4, lines: (row, pageOf) => [{ text: `${pageOf(row)}` }] },
];

/** Marks of both sides where they are alike; else the left ones, then the right ones. */
function sideMarks(row: Row): readonly Line[] {
  const { left, right } = row.marks;
  const alike = left.every((mark, index) => sameLength(mark, right[index] ?? Number.NaN));
  return marks(row, alike ? left : [...left, ...right]);
}

const yieldWords = ({ title, sheet }: NonNullable<Row['paper']>): string =>
  sheet ? `${title}: ${sheet.copies} from a sheet` : title;

const COLUMN_GAP = 1.4;
const LINE_GAP = 0.7;

const lefts = COLUMNS.map((_, index) => COLUMNS.slice(0, index).reduce((sum, { width }) => sum + width, 0));

/** Every envelope in a row: what it is for, what is cut, where it is marked from each corner; in both systems. */
export const tableOfMeasurements = (rows: () => Iterable<Row>, measure: TextMeasure): Part => ({
  title: 'Measurements',
  destination: 'measurements',
  head: headRow(measure),
  *strips(pageOf) {
    for (const row of rows()) yield tableRow(row, pageOf, measure);
  },
});

/** Clear paper above a row, in mm. */
const ABOVE = 2;

function tableRow(row: Row, pageOf: PageOf, measure: TextMeasure): Strip {
  const cells = COLUMNS.map(({ width, lines }) =>
    lines(row, pageOf).map(({ text, quiet = false }) => ({
      block: paragraph(typeset(text), width - COLUMN_GAP, SMALL, measure),
      quiet,
    })),
  );
  const heights = cells.map((cell) => stack(LINE_GAP, ...cell.map(({ block }) => block)).height);
  return {
    height: Math.max(...heights),
    above: ABOVE,
    items: ({ x, y }) => [
      {
        role: 'Table',
        rows: [
          cells.map((cell, index) => {
            let down = y;
            const runs = cell.flatMap(({ block, quiet }) => {
              const set = runsOf(
                block,
                { x: x + (lefts[index] ?? 0), y: down },
                measure,
                quiet ? 'quiet' : 'full',
              );
              down -= block.height + LINE_GAP;
              return set;
            });
            const links = index === 0 || index === COLUMNS.length - 1;
            return {
              heading: index === 0 ? ('row' as const) : null,
              runs,
              ...(links ? { to: recipeDestination(row) } : {}),
            };
          }),
        ],
      },
    ],
  };
}

function headRow(measure: TextMeasure): Strip {
  const blocks: readonly Block[] = COLUMNS.map(({ heading, width }) =>
    paragraph(heading, width + COLUMN_GAP, SMALL, measure, 'bold'),
  );
  return {
    height: beside(...blocks.map((block, index) => ({ x: lefts[index] ?? 0, block }))).height,
    items: ({ x, y }) => [
      {
        role: 'Table',
        rows: [
          blocks.map((block, index) => ({
            heading: 'column' as const,
            runs: runsOf(block, { x: x + (lefts[index] ?? 0), y }, measure),
          })),
        ],
      },
    ],
  };
}
