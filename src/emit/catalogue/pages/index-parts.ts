import { paragraph } from '../../../drawing/block.js';
import type { TextMeasure } from '../../../drawing/text-measure.js';
import { exactLength } from '../../../measure/ruler.js';
import type { Size } from '../../../recipe/recipe.js';
import type { Reading } from '../../cut-sheet/content.js';
import { both, lengths } from '../../cut-sheet/lengths.js';
import { typeset } from '../../cut-sheet/page/type.js';
import type { Row } from '../leaf.js';
import { BODY, WIDTH } from '../sizes.js';
import { type Strip, wordStrip } from '../strip.js';
import { entriesFor } from './entries.js';
import type { Part } from './part.js';
import { inAList } from '../in-a-list.js';

/** Recipes that share what an index goes by, under its words. */
interface Group {
  readonly words: string;
  /** By what groups are ordered: numbers first, the words last. */
  readonly order: readonly number[];
  readonly rows: Row[];
}

/** What one index goes by. */
interface By {
  readonly title: string;
  readonly destination: string;
  readonly group: (row: Row) => readonly Omit<Group, 'rows'>[];
}

const INDEXES: readonly By[] = [
  {
    title: 'By card',
    destination: 'index-card',
    group: (row) => [
      { words: both(sizeOf(row, longFirst(row.card))), order: sizeOrder(longFirst(row.card)) },
    ],
  },
  {
    title: 'By sheet',
    destination: 'index-sheet',
    group: (row) => {
      const sheet = row.paper?.sheet ?? null;
      if (row.paper === null || sheet === null) return [{ words: 'No sheet stated', order: [Infinity] }];
      const words = `${inAList(row.paper.title)}, ${both(sizeOf(row, longFirst(sheet)))}: ${sheet.copies} from a sheet`;
      return [{ words, order: [...sizeOrder(longFirst(sheet)), sheet.copies] }];
    },
  },
  {
    title: 'By depth',
    destination: 'index-depth',
    group: ({ depth, units }) => [
      {
        words: depth > 0 ? both(depthWords(depth, units)) : 'Flat',
        order: [Math.round(depth * 100)],
      },
    ],
  },
  {
    title: 'By tag',
    destination: 'index-tag',
    group: ({ tags }) => tags.map((words) => ({ words, order: [] })),
  },
];

const longFirst = ({ width, height }: Size): Size => ({
  width: Math.max(width, height),
  height: Math.min(width, height),
});

const sizeOf = ({ units, step }: Row, size: Size): Reading => lengths({ units, step }).readSize(size);

/** In hundredths of a mm, lest noise put one size before itself. */
const sizeOrder = ({ width, height }: Size): readonly number[] =>
  [width, height].map((side) => Math.round(side * 100));

const depthWords = (depth: number, units: Row['units']): Reading => ({
  read: exactLength(depth, units),
  other: exactLength(depth, units === 'in' ? 'mm' : 'in'),
});

/** Two columns, a gutter between. */
const GUTTER = 6;
const COLUMN = (WIDTH - GUTTER) / 2;

const ABOVE_GROUP = 3.4;

/** The book's indexes: by card, by sheet, by depth, and by tag where there are any. */
export function indexParts(rows: () => Iterable<Row>, measure: TextMeasure): readonly Part[] {
  return INDEXES.map(({ title, destination, group }): Part & { readonly groups: readonly Group[] } => {
    const groups = gathered(rows(), group);
    return {
      title,
      destination,
      columns: { count: 2, pitch: COLUMN + GUTTER },
      groups,
      *strips(pageOf) {
        const entry = entriesFor(measure, pageOf, COLUMN);
        for (const { words, rows: all } of groups) {
          const heading = paragraph(typeset(words), COLUMN, BODY, measure, 'bold');
          yield { ...wordStrip('H3', heading, measure), above: ABOVE_GROUP, keep: true } satisfies Strip;
          for (const row of all) yield entry(row);
        }
      },
    };
  }).filter(({ groups }) => groups.length > 0);
}

function gathered(rows: Iterable<Row>, group: By['group']): readonly Group[] {
  const groups = new Map<string, Group>();
  for (const row of rows)
    for (const { words, order } of group(row)) {
      const key = `${order.join(' ')} ${words}`;
      const found = groups.get(key) ?? { words, order, rows: [] };
      found.rows.push(row);
      groups.set(key, found);
    }
  return [...groups.values()].sort(byOrder);
}

function byOrder(a: Group, b: Group): number {
  const differs = a.order.findIndex((number, index) => number !== b.order[index]);
  if (differs >= 0) return (a.order[differs] ?? 0) - (b.order[differs] ?? 0);
  return a.words < b.words ? -1 : 1;
}
