import { type Palette as FindingsPalette, plain } from '../../diagnostics/render-text.js';
import { visible } from '../../text/visible.js';
import { columnsOf } from '../../text/width.js';
import { wrap } from '../../text/wrap.js';
import type { Block, Cell, Reading, Section, Sheet, Step, Table, Term } from './content.js';
import { NO_BREAK } from './lengths.js';

/** How words are set apart on a terminal, of what findings use. */
export type Palette = Pick<FindingsPalette, 'strong' | 'faint'>;

/** The sheet for a terminal: lines of at most `width` characters, tables aligned, ending in a line end. */
export function renderSheetText(sheet: Sheet, palette: Palette = plain, width = 80): string {
  const page: Page = { palette, width };
  const lines = [
    ...wrapped(sheet.title, page).map(palette.strong),
    ...(sheet.name === '' ? [] : wrapped(sheet.name, page).map(palette.faint)),
    '',
    ...wrapped(sheet.summary, page),
    ...sheet.notes.flatMap((note) => ['', ...wrapped(note, page)]),
    ...sheet.sections.flatMap((section) => ['', ...sectionLines(section, page)]),
  ];
  return `${lines.map((line) => line.trimEnd()).join('\n')}\n`;
}

interface Page {
  readonly palette: Palette;
  readonly width: number;
}

const INDENT = '  ';
const GAP = '  ';

const wrapped = (text: string, { width }: Page, less = 0): readonly string[] =>
  wrap(visible(text), Math.max(NARROWEST, width - less), columnsOf).map((line) =>
    line.replaceAll(NO_BREAK, ' '),
  );

/** A column of words is never set narrower, however narrow the terminal. */
const NARROWEST = 12;

function sectionLines({ heading, blocks }: Section<string>, page: Page): readonly string[] {
  const body = blocks.flatMap((block, index) => [...(index > 0 ? [''] : []), ...blockLines(block, page)]);
  return [page.palette.strong(heading), ...body.map((line) => INDENT + line)];
}

const blockLines = (block: Block, page: Page): readonly string[] =>
  (BLOCK_LINES[block.kind] as (block: Block, page: Page) => readonly string[])(block, page);

const BLOCK_LINES: {
  readonly [Kind in Block['kind']]: (block: Extract<Block, { kind: Kind }>, page: Page) => readonly string[];
} = {
  paragraph: ({ text }, page) => wrapped(text, page, INDENT.length),
  terms: ({ terms }, page) => termLines(terms, page),
  table: tableLines,
  steps: ({ steps }, page) => steps.flatMap((step, index) => stepLines(step, index, steps.length, page)),
};

/** Labels in a column, the text beside them. */
function termLines(terms: readonly Term[], page: Page): readonly string[] {
  const column = Math.max(...terms.map(({ label }) => columnsOf(label))) + GAP.length;
  return terms.flatMap(({ label, text }) =>
    wrapped(text, page, INDENT.length + column).map((line, index) =>
      index === 0 ? page.palette.strong(label.padEnd(column)) + line : ' '.repeat(column) + line,
    ),
  );
}

/** A number, the step's name, its words beneath. */
function stepLines({ title, text }: Step, index: number, count: number, page: Page): readonly string[] {
  const column = `${count}.`.length + 1;
  const number = `${index + 1}.`.padStart(column - 1);
  return [
    `${number} ${page.palette.strong(title)}`,
    ...wrapped(text, page, INDENT.length + column).map((line) => ' '.repeat(column) + line),
  ];
}

/** A column set to its widest cell; of readings, both systems line up on their units. */
interface Column {
  readonly text: number;
  readonly read: number;
  readonly other: number;
}

const widest = (values: readonly string[]): number => Math.max(0, ...values.map(columnsOf));

const isReading = (cell: Cell): cell is Reading => typeof cell !== 'string';

function columnOf(rows: readonly (readonly Cell[])[], index: number): Column {
  const cells = rows.map((row) => row[index] ?? '');
  const readings = cells.filter(isReading);
  const [read, other] = [
    widest(readings.map((cell) => cell.read)),
    widest(readings.map((cell) => cell.other)),
  ];
  const strings = widest(cells.filter((cell) => !isReading(cell)) as string[]);
  return { read, other, text: Math.max(strings, readings.length > 0 ? read + GAP.length + other : 0) };
}

function tableLines({ headings, rows }: Table, page: Page): readonly string[] {
  const columns = headings.map((_, index) => columnOf(rows, index));
  const whole = headings.map((heading, index) => Math.max(columnsOf(heading), columns[index]?.text ?? 0));
  const total = whole.reduce((sum, width) => sum + width, INDENT.length + GAP.length * (whole.length - 1));
  const widths =
    total <= page.width
      ? whole
      : columns.map(({ text }, index) => Math.max(text, longestWord(headings[index] ?? '')));
  return [...headingLines(headings, widths, page), ...rows.map((row) => rowLine(row, columns, widths, page))];
}

const longestWord = (text: string): number => widest(text.split(' '));

function headingLines(
  headings: readonly string[],
  widths: readonly number[],
  { palette }: Page,
): readonly string[] {
  const columns = headings.map((heading, index) => wrap(heading, widths[index] ?? 1, columnsOf));
  const height = Math.max(...columns.map((lines) => lines.length));
  return Array.from({ length: height }, (_, line) =>
    palette.faint(
      columns
        .map((lines, index) => (lines[line] ?? '').padEnd(widths[index] ?? 0))
        .join(GAP)
        .trimEnd(),
    ),
  );
}

function rowLine(
  row: readonly Cell[],
  columns: readonly Column[],
  widths: readonly number[],
  { palette }: Page,
): string {
  const cells = row.map((cell, index) => {
    const { read, other } = columns[index] as Column;
    const width = widths[index] ?? 0;
    if (!isReading(cell)) return cell.padEnd(width);
    const pair = cell.read.padStart(read) + GAP + palette.faint(cell.other.padStart(other));
    return pair + ' '.repeat(Math.max(0, width - read - GAP.length - other));
  });
  return cells.join(GAP);
}
