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
  ]);
  expect(read.every((line) => Number.isFinite(Number(line['card_width_mm'])))).toBe(true);
});
