/*
 * catalogue/html/: a book as one page that stands alone: nothing from a network, and everything to be read without its script.
 * In: a book, and its leaves one at a time. Out: the page, piece by piece.
 * Refuses to know: where it is read from.
 */
import { createHash } from 'node:crypto';
import { sizeNamed, sizeNames } from '../../../stock/sizes.js';
import { element } from '../../../text/markup.js';
import { ALL_CAUTIONS } from '../../cut-sheet/sections/cautions.js';
import type { Book, BookEmitter } from '../book.js';
import type { Row } from '../leaf.js';
import { client, type Listed, type PageData } from './client.js';
import { fitOf } from './fit-of.js';
import { readQuery } from './read-query.js';
import { jsonInPage, recipe, words } from './recipe.js';
import { searchForm } from './search-form.js';
import { STYLE } from './style.js';
import { tableOf } from './table.js';

/** What runs in the page: each function names nothing outside itself, so that its text is all there is to it. */
const SCRIPT = `(${String(client)})({ readQuery: ${String(readQuery)}, fitOf: ${String(fitOf)} });`;

const hashed = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** Should a text ever be taken for markup all the same, it loads nothing and runs nothing. */
const POLICY = `default-src 'none'; img-src data:; style-src ${hashed(STYLE)}; style-src-attr 'unsafe-inline'; script-src ${hashed(SCRIPT)}; base-uri 'none'; form-action 'none'`;

export const html: BookEmitter = async function* ({ book, leaf }, { advance }) {
  const rows = book.chapters.flatMap((chapter) => chapter.rows);
  yield bytes(`<!doctype html>\n<html lang="en">\n${head(book)}\n<body>\n${front(book, rows)}\n`);
  for (const [index, { title, rows: all }] of book.chapters.entries()) {
    yield bytes(
      `<section class="recipes" aria-labelledby="section-${index}">\n<h2 id="section-${index}">${words(title ?? 'Envelopes')}</h2>\n`,
    );
    for (const row of all) {
      yield bytes(`${recipe(row, leaf(row))}\n`);
      advance();
    }
    yield bytes('</section>\n');
  }
  yield bytes(
    `</main>\n${problems(book)}<script type="application/json" id="data">${jsonInPage(dataOf(book, rows))}</script>\n`,
  );
  yield bytes(`<script>${SCRIPT}</script>\n</body>\n</html>\n`);
};

const bytes = (text: string): Uint8Array => Buffer.from(text);

const head = ({ title }: Book): string =>
  element('head', {}, [
    '<meta charset="utf-8"/>',
    element('meta', { 'http-equiv': 'Content-Security-Policy', content: POLICY }),
    '<meta name="viewport" content="width=device-width, initial-scale=1"/>',
    `<title>${words(title)}</title>`,
    `<style>${STYLE}</style>`,
  ]);

const paragraphs = (texts: readonly string[]): readonly string[] =>
  texts.map((text) => `<p>${words(text)}</p>`);

/** All that stands before the recipes. */
function front(book: Book, rows: readonly Row[]): string {
  return [
    '<header>',
    `<h1>${words(book.title)}</h1>`,
    ...(book.by === null ? [] : [`<p class="by">${words(book.by)}</p>`]),
    ...paragraphs([...book.note, ...book.foreword]),
    '</header>',
    '<main>',
    searchForm(rows),
    tableOf(rows),
    '<h2>Take care</h2>',
    element(
      'dl',
      {},
      ALL_CAUTIONS.map(({ label, text }) => `<dt>${words(label)}</dt><dd>${words(text)}</dd>`),
    ),
  ].join('\n');
}

function problems({ problems: all }: Book): string {
  if (all.length === 0) return '';
  const items = all.map(
    ({ file, line, message, help }) =>
      `<li><span class="quiet">${words(`${file}, line ${line}`)}</span> ${words(message)}${help === null ? '' : `. To mend it: ${words(help)}`}</li>`,
  );
  return `<footer>\n<h2>Not in this book yet</h2>\n${element('ul', {}, items)}\n</footer>\n`;
}

const dataOf = ({ units }: Book, rows: readonly Row[]): PageData => ({
  units,
  sizes: Object.fromEntries(
    [...sizeNames()].map((name) => {
      const { short = 0, long = 0 } = sizeNamed(name) ?? {};
      return [name.toLowerCase(), [short, long]];
    }),
  ),
  rows: rows.map(listed),
});

const listed = ({ name, title, file, tags, paper, room, card, depth }: Row): Listed => ({
  name,
  words: [name, title, file, ...tags, paper?.title ?? ''].join(' ').toLowerCase(),
  tags,
  paper: paper?.title ?? '',
  room,
  bulk: card.bulk,
  depth,
});
