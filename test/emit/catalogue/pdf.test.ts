import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { onTestFinished, expect, test } from 'vitest';
import { bookletSheets } from '../../../src/emit/catalogue/pdf/booklet.js';
import { pdf } from '../../../src/emit/catalogue/pdf/pdf.js';
import { bookOf, MANY_KINDS, writtenBy } from '../../support/book.js';

/** Read by a library that had no part in writing it. */
async function opened(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  onTestFinished(() => document.destroy());
  return document;
}

const read = async (
  text: string,
  parts?: Parameters<typeof bookOf>[1],
  options?: Parameters<typeof writtenBy>[2],
) => opened(await writtenBy(pdf, await bookOf(text, parts), options));

async function textOf(document: PDFDocumentProxy, number: number): Promise<string> {
  const { items } = await (await document.getPage(number)).getTextContent();
  return items
    .map((item) => ('str' in item ? item.str : ''))
    .join(' ')
    .replaceAll(/[\s\u00a0\u202f]+/g, ' ');
}

const all = async (document: PDFDocumentProxy): Promise<readonly string[]> =>
  Promise.all(Array.from({ length: document.numPages }, (_, index) => textOf(document, index + 1)));

const PARTS = { title: 'Envelopes for the tide cards', by: 'The studio', foreword: ['Measure twice.'] };

test('cover, foreword, contents, table, a page for each envelope, indexes: in that order', async () => {
  const pages = await all(await read(MANY_KINDS, PARTS));
  const where = (words: string) => pages.findIndex((page) => page.includes(words)) + 1;
  expect(pages[0]).toContain('Envelopes for the tide cards');
  const order = [
    'Measure twice.',
    'Take care',
    'Contents',
    'Measurements',
    'A flat envelope for a card',
    'By card',
    'By sheet',
    'By depth',
    'By tag',
  ];
  const found = order.map(where);
  expect(found.every((page) => page > 0)).toBe(true);
  expect(found).toEqual(found.toSorted((a, b) => a - b));
});

test('the table has every measurement in inches and in millimetres', async () => {
  const pages = await all(await read(MANY_KINDS, PARTS));
  const table = pages.find((page) => page.includes('Measurements')) ?? '';
  // 11 1/4 in, common practice for a half-letter card, no published source; a fraction is set with a fraction slash.
  for (const words of [
    '11 1⁄4 in',
    '285.8 mm',
    '7 3⁄16 in',
    '182.6 mm',
    '0.53 in',
    'flat',
    'Brown kraft: 1 from a sheet',
  ])
    expect(table.replaceAll('\u2044', '⁄')).toContain(words);
});

test('every page number leads to the page that has it', async () => {
  const document = await read(MANY_KINDS, PARTS);
  let links = 0;
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    for (const { subtype, dest } of await page.getAnnotations()) {
      expect(subtype).toBe('Link');
      const [reference] = (await document.getDestination(dest)) ?? [];
      const target = (await document.getPageIndex(reference)) + 1;
      expect(await textOf(document, target)).toContain(`${target}`);
      links++;
    }
  }
  // Each of five envelopes in contents, twice in the table, by card, sheet and depth, and three tags in all.
  expect(links).toBe(5 * (1 + 2 + 3) + 4);
});

test('the outline names all parts and, beneath the sections, all envelopes', async () => {
  const outline = await (await read(MANY_KINDS, PARTS)).getOutline();
  expect(outline.map(({ title }) => title)).toEqual([
    'Envelopes for the tide cards',
    'Foreword',
    'Contents',
    'Measurements',
    'Recipes',
    'By card',
    'By sheet',
    'By depth',
    'By tag',
  ]);
  expect(outline[4]?.items.map(({ title }) => title)).toEqual([
    'Half-letter tide table',
    'quarter',
    'Shell box <b>& "co"</b> =1+1 | *tide*',
    'Solstice, lined',
    '@ferry: opens at the end',
  ]);
});

test('it is read aloud in order: language, headings, tables with their heads, figures with words in their stead', async () => {
  const document = await read(MANY_KINDS, PARTS);
  const { info, metadata } = await document.getMetadata();
  expect(info).toMatchObject({ Title: PARTS.title, Author: PARTS.by, Language: 'en' });
  expect(await document.getMarkInfo()).toMatchObject({ Marked: true });
  expect(metadata.get('dc:title')).toBe(PARTS.title);
  const pages = await all(document);
  const number = pages.findIndex((page) => page.includes('A flat envelope for a card 8')) + 1;
  const tree = JSON.stringify(await (await document.getPage(number)).getStructTree());
  const roles = [...tree.matchAll(/"role":"([A-Za-z0-9]+)"/g)].map(([, role]) => role);
  const seen = [...new Set(roles)];
  expect(seen).toEqual(
    expect.arrayContaining([
      'Sect',
      'H2',
      'P',
      'Figure',
      'Table',
      'TR',
      'TH',
      'TD',
      'H3',
      'L',
      'LI',
      'Lbl',
      'LBody',
    ]),
  );
  expect(seen.indexOf('H2')).toBeLessThan(seen.indexOf('Table'));
  expect(tree).toContain('"alt":"The open blank, seen from the inside.');
});

test('the same book gives the same bytes', async () => {
  const [one, other] = [await bookOf(MANY_KINDS, PARTS), await bookOf(MANY_KINDS, PARTS)];
  expect((await writtenBy(pdf, one)).equals(await writtenBy(pdf, other))).toBe(true);
});

test('titles of any length and script are printed, and break nothing', async () => {
  const titles = ['&<>()\\\\', '\u202eright to left', '潮汐', '😀 tide', 'x'.repeat(300), 'a b '.repeat(90)];
  const recipes = titles.map((title, index) => `envelope e-${index} {\n  title: "${title}"\n  card: A6\n}\n`);
  const document = await read(`units mm\n${recipes.join('')}`, { title: titles[0] ?? '', units: 'mm' });
  const [, , , , recipesPart] = await document.getOutline();
  expect(recipesPart?.items).toHaveLength(titles.length);
  const { metadata } = await document.getMetadata();
  expect(metadata.get('dc:title')).toBe(titles[0]);
});

test('a broken recipe is told on a page of its own', async () => {
  const pages = await all(
    await read(`${MANY_KINDS}\nenvelope gaping {\n  card: 8 1/2 x 5 1/2\n  blank: 10\n}\n`, PARTS),
  );
  const page = pages.find((text) => text.includes('Not in this book yet'));
  expect(page).toContain('tides.plica, line 46: error (creases-cross)');
  expect(page).toContain('To mend it:');
});

test.each([
  { width: 90, height: 180 },
  { width: 148, height: 210 },
  { width: 210, height: 297 },
  { width: 500, height: 500 },
])(
  'every page is as the statement says, and all that is on it is within: $width × $height mm',
  async (page) => {
    const document = await read(MANY_KINDS, { ...PARTS, page });
    for (let number = 1; number <= document.numPages; number++) {
      const sheet = await document.getPage(number);
      const [, , width = 0, height = 0] = sheet.view;
      expect([width, height].map((side) => side / (72 / 25.4))).toEqual([
        expect.closeTo(page.width, 3),
        expect.closeTo(page.height, 3),
      ]);
      for (const item of (await sheet.getTextContent()).items) {
        if (!('str' in item) || item.str.trim() === '') continue;
        const [, , , , x, y] = item.transform as number[];
        expect(x).toBeGreaterThan(0);
        expect((x ?? 0) + (item.transform[1] === 0 ? item.width : 0)).toBeLessThan(width);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThan(height);
      }
    }
  },
);

test.each(Array.from({ length: 17 }, (_, index) => index + 1))(
  'folded and stapled, %i pages follow each other',
  (pages) => {
    const sheets = bookletSheets(pages);
    // Opened one leaf after the other: the fronts' right halves and the backs' left ones, then back again from the middle.
    const firstHalf = sheets.flatMap(({ front, back }) => [front[1], back[0]]);
    const secondHalf = [...sheets].reverse().flatMap(({ front, back }) => [back[1], front[0]]);
    const order = [...firstHalf, ...secondHalf];
    expect(order.slice(0, pages)).toEqual(Array.from({ length: pages }, (_, index) => index + 1));
    expect(order.slice(pages).every((page) => page === null)).toBe(true);
  },
);

test('as a booklet, two pages stand side by side on a sheet twice as wide', async () => {
  const single = await read(MANY_KINDS, PARTS);
  const document = await read(MANY_KINDS, PARTS, { booklet: true });
  const sheets = bookletSheets(single.numPages);
  expect(document.numPages).toBe(2 * sheets.length);
  const pages = await all(single);
  for (const [index, { front, back }] of sheets.entries())
    for (const [side, [left, right]] of [front, back].entries()) {
      const text = await textOf(document, 2 * index + side + 1);
      const expected = [left, right].map((page) => (page === null ? '' : (pages[page - 1] ?? ''))).join(' ');
      const words = (said: string) =>
        said
          .split(' ')
          .filter((word) => word !== '')
          .sort();
      expect(words(text)).toEqual(words(expected));
    }
});
