/*
 * catalogue/pages/: the pages of a book around its leaves: cover, foreword, contents, table, problems, indexes.
 * In: a book, and its leaves one at a time. Out: chapters and pages of plain items, from front to back.
 * Refuses to know: how pages become bytes.
 */
import { paragraph } from '../../../drawing/block.js';
import type { TextMeasure } from '../../../drawing/text-measure.js';
import type { Book, BookSource } from '../book.js';
import { recipeDestination } from '../destinations.js';
import { countPages, fillPages, type Heads } from '../fill-pages.js';
import type { Row } from '../leaf.js';
import type { Item, Piece } from '../page.js';
import { TITLE, WIDTH } from '../sizes.js';
import { over, wordStrip } from '../strip.js';
import { contentsPart } from './contents-part.js';
import { cover } from './cover.js';
import { type Frame, frameFor } from './frame.js';
import { frontPart } from './front-part.js';
import { indexParts } from './index-parts.js';
import type { PageOf, Part } from './part.js';
import { problemsPart } from './problems-part.js';
import { tableOfMeasurements } from './table.js';

/** A book's pages, each made when it is asked for. */
export interface Pages {
  readonly count: () => number;
  readonly pieces: () => Iterable<Piece>;
}

/** The plan of a book: how long each part is, and so where each recipe stands. `advance` is told of each recipe set. */
export function pagesOf({ book, leaf }: BookSource, measure: TextMeasure, advance: () => void): Pages {
  const frame = frameFor(book.page, measure);
  const rows = function* (): Generator<Row> {
    for (const chapter of book.chapters) yield* chapter.rows;
  };
  const before = [frontPart(book, measure), contentsPart(book, measure), tableOfMeasurements(rows, measure)];
  const after = [problemsPart(book, measure), ...indexParts(rows, measure)].filter((part) => part !== null);
  const sum = (parts: readonly Part[]): number =>
    parts.reduce((pages, part) => pages + lengthOf(part, measure), 0);

  const firstRecipe = COVER + sum(before) + 1;
  const starts = new Map<string, number>();
  let next = firstRecipe;
  for (const row of rows()) {
    starts.set(row.name, next);
    next += row.pages;
  }
  const pageOf: PageOf = ({ name }) => starts.get(name) ?? 0;

  function* pieces(): Generator<Piece> {
    yield { kind: 'chapter', title: book.title, level: 1, destination: 'cover' };
    yield { kind: 'page', page: { groups: frame(cover(book, measure), 1, '').groups.map(withoutFurniture) } };
    let number = COVER;
    const part = function* (each: Part): Generator<Piece> {
      yield { kind: 'chapter', title: each.title, level: 1, destination: each.destination };
      for (const items of itemsOf(each, pageOf, measure))
        yield { kind: 'page', page: frame(items, ++number, each.title) };
    };
    for (const each of before) yield* part(each);
    yield* recipePieces(book, leaf, frame, number, advance);
    number = next - 1;
    for (const each of after) yield* part(each);
  }
  return { count: () => next - 1 + sum(after), pieces };
}

const COVER = 1;

const withoutFurniture = <T extends { readonly items: readonly Item[] }>(group: T): T => ({
  ...group,
  items: group.items.slice(0, -1),
});

/** The recipes, section by section. */
function* recipePieces(
  book: Book,
  leaf: BookSource['leaf'],
  frame: Frame,
  before: number,
  advance: () => void,
): Generator<Piece> {
  let number = before;
  for (const { title, rows } of book.chapters) {
    const head = title ?? book.title;
    yield { kind: 'chapter', title: title ?? 'Recipes', level: 1, destination: `section-${number + 1}` };
    for (const row of rows) {
      yield { kind: 'chapter', title: row.title, level: 2, destination: recipeDestination(row) };
      for (const items of leaf(row).pages) yield { kind: 'page', page: frame(items, ++number, head) };
      advance();
    }
  }
}

/** Between a part's title and the heads of its columns, in mm. */
const AFTER_TITLE = 5;

/** A part's pages: its title, then its strips. */
const itemsOf = (part: Part, pageOf: PageOf, measure: TextMeasure): Iterable<readonly Item[]> =>
  fillPages(part.strips(pageOf), part.columns, headsOf(part, measure));

const lengthOf = (part: Part, measure: TextMeasure): number =>
  countPages(
    part.strips(() => 0),
    part.columns,
    headsOf(part, measure),
  );

function headsOf(part: Part, measure: TextMeasure): Heads {
  const title = wordStrip('H1', paragraph(part.title, WIDTH, TITLE, measure, 'bold'), measure);
  const others = part.head ?? null;
  return { first: others ? over(AFTER_TITLE, title, others) : title, others };
}
