import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { csv } from '../../../src/emit/catalogue/csv.js';
import { bookOf, MANY_KINDS, writtenBy } from '../../support/book.js';

const HOSTILE = `units mm
envelope a { card: A6
  title: "=HYPERLINK(\\"http://x\\")" }
envelope b { card: A6
  title: "+1, and a \\"quote\\"" }
envelope c { card: A6
  title: "-2" }
envelope d { card: A6
  title: "@sum" }
envelope e { card: A6
  title: "  = 1" }
envelope f { card: A6
  title: "\t= \u001b[2J\u202e1" }
envelope g { card: A6
  title: "\u200b=1" }
`;

/** Read as RFC 4180 says, by a library that had no part in writing it. */
const rows = (bytes: Buffer) =>
  parse(bytes, { bom: true, columns: true, relax_column_count: false, record_delimiter: '\r\n' }) as Readonly<
    Record<string, string>
  >[];

test('a row for each envelope, every figure as the facts have it', async () => {
  const source = await bookOf(MANY_KINDS);
  const read = rows(await writtenBy(csv, source));
  const all = source.book.chapters.flatMap((chapter) => chapter.rows);
  expect(read.map(({ name }) => name)).toEqual(all.map(({ name }) => name));
  for (const [index, row] of all.entries()) {
    const { facts } = source.leaf(row);
    const line = read[index] ?? {};
    expect(Number(line['blank_width_mm'])).toBeCloseTo(facts.blank.width, 2);
    expect(Number(line['seal_mark_mm'])).toBeCloseTo(facts.scores.seal[0]?.alongEdge ?? Number.NaN, 2);
    expect(Number(line['face_height_mm'])).toBeCloseTo(facts.face.height, 2);
    expect(line['left_second_mark_mm'] === '').toBe(facts.depth === 0);
  }
  expect(read[0]).toMatchObject({ blank_width: '11 1/4 in', seal_mark: '7 3/16 in', from_a_sheet: '1' });
});

test('the classes of post that a recipe names, and all whose published limits it keeps', async () => {
  const text = `units mm
paper chart { weight: 90 gsm }
envelope a6-tides {
  card: A6
  face: C6
  paper: chart
  post: gb-letter
  expect post de-standard
}
envelope no-paper { card: A6 }
`;
  const [tides, unweighed] = rows(await writtenBy(csv, await bookOf(text)));
  expect(tides?.['post']).toBe('gb-letter de-standard');
  // C6, 162 x 114 mm and 1.42 times as long as high, is within each of these (test/reference/postal.json).
  expect(tides?.['post_taken_as']?.split(' ')).toEqual(
    expect.arrayContaining([
      'us-letter',
      'gb-letter',
      'de-standard',
      'au-small',
      'jp-standard',
      'upu-standardized',
    ]),
  );
  // Every class limits the mass, and without a weight that is not known.
  expect(unweighed).toMatchObject({ post: '', post_taken_as: '' });
});

test('lines end in CR LF, and there are as many fields in each (RFC 4180, 2)', async () => {
  const text = (await writtenBy(csv, await bookOf(MANY_KINDS))).toString();
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  expect(text.endsWith('\r\n')).toBe(true);
});

test('no text is a formula, and numbers stay numbers', async () => {
  const read = rows(await writtenBy(csv, await bookOf(HOSTILE)));
  expect(read.map(({ title }) => title)).toEqual([
    '\'=HYPERLINK("http://x")',
    '\'+1, and a "quote"',
    "'-2",
    "'@sum",
    "'  = 1",
    "' = \\u{1b}[2J\\u{202e}1",
    '\\u{200b}=1',
  ]);
  expect(read.every((line) => Number.isFinite(Number(line['card_width_mm'])))).toBe(true);
});
