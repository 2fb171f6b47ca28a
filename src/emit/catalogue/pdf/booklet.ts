import type { Size } from '../../../recipe/recipe.js';
import type { BookPage, Item, Piece, Run, Words } from '../page.js';

/** Both sides of a sheet as numbers of pages from 1, left and right; null: nothing is printed there. */
export interface Sheet {
  readonly front: readonly [left: number | null, right: number | null];
  readonly back: readonly [left: number | null, right: number | null];
}

/** Four pages go on a sheet: two on each side. */
const PER_SHEET = 4;

/** More sheets than this are too thick to be folded and stapled as one (common practice, no source). */
export const MOST_STAPLED = 20;

/** The sheets of a booklet, from the outermost in: printed on both sides, flipped on the short edge, laid into each other. */
export function bookletSheets(pages: number): readonly Sheet[] {
  const all = Math.ceil(pages / PER_SHEET) * PER_SHEET;
  const page = (number: number): number | null => (number <= pages ? number : null);
  return Array.from({ length: all / PER_SHEET }, (_, sheet) => ({
    front: [page(all - 2 * sheet), page(2 * sheet + 1)],
    back: [page(2 * sheet + 2), page(all - 2 * sheet - 1)],
  }));
}

/**
 * A book's pages two by two on the sides of sheets, for printing alone: no chapters, no links, and nothing that is read aloud, since
 * the order of sheets is not that of reading. `size`: of a page, in points.
 */
export function* booklet(pieces: Iterable<Piece>, size: Size): Generator<Piece> {
  const pages = [...pieces].flatMap((piece) => (piece.kind === 'page' ? [piece.page] : []));
  for (const { front, back } of bookletSheets(pages.length))
    for (const [left, right] of [front, back]) {
      const halves = [printed(pages, left, 0), printed(pages, right, size.width)];
      yield { kind: 'page', page: { groups: [...halves.flat(), foldMarks(size)] } };
    }
}

function printed(pages: readonly BookPage[], number: number | null, x: number): BookPage['groups'] {
  const page = number === null ? undefined : pages[number - 1];
  return (page?.groups ?? []).map((group) => ({
    ...group,
    x: group.x + x,
    items: group.items.map(seenOnly),
  }));
}

/** An item as it looks, without what it means. */
const seenOnly = (item: Item): Item => ({
  role: 'Artifact',
  operators: 'operators' in item ? item.operators : '',
  runs: runsOf(item),
});

function runsOf(item: Item): readonly Run[] {
  if (item.role === 'Table') return item.rows.flat().flatMap(({ runs }) => runs);
  if (item.role === 'TOC') return item.items.flatMap(({ runs }: Words) => runs);
  if (item.role === 'L')
    return item.items.flatMap(({ label, body }) => [...(label?.runs ?? []), ...body.runs]);
  return item.runs;
}

/** A short hairline above and below, where the sheet is folded; in points. */
function foldMarks({ width, height }: Size): BookPage['groups'][number] {
  const marks = [`${width} 4 m ${width} 14 l S`, `${width} ${height - 14} m ${width} ${height - 4} l S`];
  return {
    x: 0,
    y: 0,
    scale: 1,
    items: [{ role: 'Artifact', operators: ['0.35 w', ...marks].join('\n'), runs: [] }],
  };
}
