import type { Point } from '../../plane/point.js';
import type { Item } from './page.js';
import { HEIGHT } from './sizes.js';
import type { Strip } from './strip.js';

/** Between two strips where neither says otherwise, in mm. */
const GAP = 3.2;

export interface Columns {
  readonly count: number;
  /** From the left edge of one to that of the next, in mm. */
  readonly pitch: number;
}

const ONE: Columns = { count: 1, pitch: 0 };

/** What stands above the columns: on the first page, and on those that follow. */
export interface Heads {
  readonly first: Strip | null;
  readonly others: Strip | null;
}

const NO_HEADS: Heads = { first: null, others: null };

/**
 * Strips one below the other, column after column, page after page. One is never split,
 * and none is taller than a page. A strip that keeps with the next is moved on with it.
 */
export function* fillPages(
  strips: Iterable<Strip>,
  columns: Columns = ONE,
  heads: Heads = NO_HEADS,
): Generator<readonly Item[]> {
  for (const placed of placedOn(strips, columns, heads))
    yield joined(placed.flatMap(({ strip, corner }) => strip.items(corner)));
}

/** How many pages the same fill, without setting anything. */
export function countPages(strips: Iterable<Strip>, columns: Columns = ONE, heads: Heads = NO_HEADS): number {
  let count = 0;
  for (const _ of placedOn(strips, columns, heads)) count++;
  return count;
}

/** A strip, and where it hangs. */
interface PlacedStrip {
  readonly strip: Strip;
  readonly corner: Point;
}

function* placedOn(
  strips: Iterable<Strip>,
  columns: Columns,
  heads: Heads,
): Generator<readonly PlacedStrip[]> {
  let placed: PlacedStrip[] = [];
  let [column, down] = [0, 0];
  let head = heads.first;
  const top = (): number => (head ? head.height + GAP : 0);
  const newPage = (): void => {
    placed = head ? [{ strip: head, corner: { x: 0, y: HEIGHT } }] : [];
    [column, down] = [0, top()];
  };
  newPage();
  for (const group of kept(strips)) {
    const height = heightOf(group);
    const fits = down + (down > top() ? (group[0]?.above ?? GAP) : 0) + height <= HEIGHT + 1e-6;
    if (!fits && down > top()) {
      if (column + 1 < columns.count) [column, down] = [column + 1, top()];
      else {
        yield placed;
        head = heads.others;
        newPage();
      }
    }
    for (const strip of group) {
      if (down > top()) down += strip.above ?? GAP;
      placed.push({ strip, corner: { x: column * columns.pitch, y: HEIGHT - down } });
      down += strip.height;
    }
  }
  yield placed;
}

/** Strips that stay together. */
function* kept(strips: Iterable<Strip>): Generator<readonly Strip[]> {
  let group: Strip[] = [];
  for (const strip of strips) {
    group.push(strip);
    if (strip.keep) continue;
    yield group;
    group = [];
  }
  if (group.length > 0) yield group;
}

const heightOf = (group: readonly Strip[]): number =>
  group.reduce((sum, { height, above = GAP }, index) => sum + height + (index > 0 ? above : 0), 0);

/** Rows of one table, entries of one list that follow each other become one; what nobody reads may stand between them. */
function joined(items: readonly Item[]): readonly Item[] {
  const all: Item[] = [];
  for (const item of items) {
    const at = all.findLastIndex(({ role }) => role !== 'Artifact');
    const before = all[at];
    if (before?.role === 'Table' && item.role === 'Table')
      all[at] = { ...before, rows: [...before.rows, ...item.rows] };
    else if (before?.role === 'TOC' && item.role === 'TOC')
      all[at] = { ...before, items: [...before.items, ...item.items] };
    else all.push(item);
  }
  return all;
}
