import { beside, type Block, paragraph, stack } from '../../../drawing/block.js';
import type { TextMeasure } from '../../../drawing/text-measure.js';
import type { Reading } from '../../cut-sheet/content.js';
import { typeset } from '../../cut-sheet/page/type.js';
import { recipeDestination } from '../destinations.js';
import type { Row } from '../leaf.js';
import { MEASUREMENTS } from '../measurement-columns.js';
import { SMALL } from '../sizes.js';
import { runsOf, type Strip } from '../strip.js';
import type { PageOf, Part } from './part.js';
import { inAList } from '../in-a-list.js';

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

const lines = ({ read, other }: Reading): readonly Line[] =>
  other === '' ? [{ text: read }] : [{ text: read }, { text: other, quiet: true }];

/** The columns of figures, each with its width in mm; the paper stands under the envelope's title. */
const FIGURES: readonly (readonly [heading: string, width: number])[] = [
  ['Card', 23],
  ['Blank', 14.5],
  ['Sides', 12.5],
  ['Seal', 12.5],
  ['Bottom', 12.5],
  ['Depth', 9],
];

/** The table's columns, together as wide as a page's text. */
const COLUMNS: readonly Column[] = [
  {
    heading: 'Envelope',
    width: 27,
    lines: ({ title, paper, post }) => [
      { text: inAList(title) },
      ...(paper ? [{ text: yieldWords(paper), quiet: true }] : []),
      ...(post.length > 0 ? [{ text: post.join(', '), quiet: true }] : []),
    ],
  },
  ...FIGURES.map(([heading, width]): Column => {
    const column = MEASUREMENTS.find((each) => each.heading === heading);
    return { heading, width, lines: (row) => (column?.readings(row) ?? []).flatMap(lines) };
  }),
  { heading: 'Page', width: 4, lines: (row, pageOf) => [{ text: `${pageOf(row)}` }] },
];

const yieldWords = ({ title, sheet }: NonNullable<Row['paper']>): string =>
  sheet ? `${inAList(title)}: ${sheet.copies} from a sheet` : inAList(title);

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
