import type { Cell, Reading, Table } from '../content.js';
import { wrap } from '../../../text/wrap.js';
import { lineStrip, words } from './line.js';
import type { Item, Strip } from './strip.js';
import { BESIDE, COLUMN_HEADING, FIGURES, type Measure, typeset } from './type.js';

/** Between columns, and between the two systems of a reading. */
const GUTTER = 15;
const BETWEEN = 7;

/** A column of a table: its cells' widest, and its place. */
interface Column {
  readonly x: number;
  readonly width: number;
  readonly read: number;
  readonly other: number;
}

const isReading = (cell: Cell): cell is Reading => typeof cell !== 'string';

/** A table of its natural width, hairlines above and below; it is never broken. Readings line up on their units. */
export function setTable({ headings, rows }: Table, width: number, measure: Measure): readonly Strip[] {
  const columns = placed(headings, rows, width, measure);
  const last = columns.at(-1);
  const across = last ? last.x + last.width : 0;
  const head = setHeadings(headings, columns, across, measure);
  const body = rows.map((row, index): Strip => {
    const line = lineStrip(
      row.flatMap((cell, column) => setCell(cell, columns[column] as Column, measure)),
      FIGURES,
    );
    const end = index === rows.length - 1;
    const foot: Item = { kind: 'hairline', x: 0, y: line.height + 2, width: across };
    return {
      ...line,
      above: index === 0 ? 2 : 0,
      height: line.height + (end ? 3 : 0),
      items: [...line.items, ...(end ? [foot] : [])],
      keepsWithNext: !end,
    };
  });
  return [head, ...body];
}

/** Columns from left to right. Headings are set on one line where there is room, else as narrow as their cells. */
function placed(
  headings: readonly string[],
  rows: readonly (readonly Cell[])[],
  width: number,
  measure: Measure,
): readonly Column[] {
  const cells = headings.map((_, index) =>
    cellWidths(
      rows.map((row) => row[index] ?? ''),
      measure,
    ),
  );
  const whole = headings.map((heading, index) =>
    Math.max(cells[index]?.width ?? 0, measure(heading, COLUMN_HEADING)),
  );
  const total = whole.reduce((sum, column) => sum + column + GUTTER, -GUTTER);
  const widths =
    total <= width
      ? whole
      : headings.map((heading, index) => {
          const longest = Math.max(...heading.split(' ').map((word) => measure(word, COLUMN_HEADING)));
          return Math.max(cells[index]?.width ?? 0, longest);
        });
  let x = 0;
  return widths.map((column, index) => {
    const { read, other } = cells[index] ?? { read: 0, other: 0 };
    const at = { x, width: column, read, other };
    x += column + GUTTER;
    return at;
  });
}

function cellWidths(cells: readonly Cell[], measure: Measure): Omit<Column, 'x'> {
  const readings = cells.filter(isReading);
  const read = Math.max(0, ...readings.map((cell) => measure(typeset(cell.read), FIGURES)));
  const other = Math.max(0, ...readings.map((cell) => measure(typeset(cell.other), BESIDE)));
  const texts = cells.map((cell) => (isReading(cell) ? 0 : measure(typeset(cell), FIGURES)));
  return { read, other, width: Math.max(...texts, readings.length > 0 ? read + BETWEEN + other : 0) };
}

function setHeadings(
  headings: readonly string[],
  columns: readonly Column[],
  across: number,
  measure: Measure,
): Strip {
  const set = headings.map((heading, index) =>
    wrap(heading, (columns[index]?.width ?? 0) + 0.01, (text) => measure(text, COLUMN_HEADING)),
  );
  const lines = Math.max(...set.map(({ length }) => length));
  const items = set.flatMap((heading, index) =>
    heading.map((text, line): Item => {
      const item = words(text, columns[index]?.x ?? 0, COLUMN_HEADING);
      return { ...item, y: item.y + (lines - heading.length + line) * COLUMN_HEADING.leading };
    }),
  );
  const height = lines * COLUMN_HEADING.leading + 3;
  return {
    above: 0,
    height,
    items: [...items, { kind: 'hairline', x: 0, y: height - 0.5, width: across }],
    keepsWithNext: true,
  };
}

function setCell(cell: Cell, { x, read, other }: Column, measure: Measure): readonly Item[] {
  if (!isReading(cell)) return [words(typeset(cell), x, FIGURES)];
  const [own, beside] = [typeset(cell.read), typeset(cell.other)];
  return [
    words(own, x + read - measure(own, FIGURES), FIGURES),
    words(beside, x + read + BETWEEN + other - measure(beside, BESIDE), BESIDE),
  ];
}
