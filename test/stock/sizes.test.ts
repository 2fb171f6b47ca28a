import PDFDocument from 'pdfkit';
import { describe, expect, test } from 'vitest';
import { SOURCES } from '../../src/stock/sources.js';
import { sizeNamed, sizeNames, usNamesake } from '../../src/stock/sizes.js';
import { ISO_SIZES } from '../../src/stock/sizes-iso.js';
import { US_CARDS, US_SHEETS } from '../../src/stock/sizes-us.js';
import { referenceTable } from '../support/reference-table.js';

const INCH = 25.4;

describe('against published tables (test/reference)', () => {
  const iso = referenceTable('iso-sizes.tsv').filter(
    ({ series, name }) => series !== 'envelope' || name === 'DL',
  );

  test.each(iso)('$name', ({ name = '', width_mm, height_mm }) => {
    expect(sizeNamed(name)).toMatchObject({ short: Number(width_mm), long: Number(height_mm) });
  });

  test('no other ISO size is known', () => {
    expect(ISO_SIZES.map(([name]) => name).sort()).toEqual(iso.map(({ name }) => name).sort());
  });

  const us = referenceTable('us-sizes.tsv');
  test.each([
    ['letter', 'ANSI A / Letter'],
    ['legal', 'Legal'],
    ['tabloid', 'ANSI B / Tabloid (Ledger when turned)'],
  ])('%s', (name, published) => {
    const row = us.find((each) => each.name === published);
    expect(sizeNamed(name)?.short).toBeCloseTo(Number(row?.width_mm), 6);
    expect(sizeNamed(name)?.long).toBeCloseTo(Number(row?.height_mm), 6);
  });

  test.each(['A1', 'A2', 'A6', 'A7', 'A8', 'A9', 'A10'])('the card for a US %s envelope', (name) => {
    const row = us.find(
      (each) => each.family === 'announcement' && (each.name === name || each.name?.startsWith(`${name} `)),
    );
    const [long, short] = (row?.usual_card_in ?? '').split(';')[0]?.split(' x ').map(Number) ?? [];
    const card = sizeNamed(`us-${name}`);
    expect(card?.long).toBeCloseTo((long as number) * INCH, 9);
    expect(card?.short).toBeCloseTo((short as number) * INCH, 9);
    // Every card is smaller than its envelope.
    expect(card?.long).toBeLessThan(Number(row?.width_mm));
    expect(card?.short).toBeLessThan(Number(row?.height_mm));
  });
});

/** The page sizes that the PDF library carries, in points to a hundredth. */
test.each([
  ...['A0', 'A1', 'A2', 'A3', 'A4', 'A5', 'A6', 'A7', 'A8', 'A9', 'A10'],
  ...['B0', 'B1', 'B2', 'B3', 'B4', 'B5', 'B6', 'B7', 'B8', 'B9', 'B10'],
  ...['C0', 'C1', 'C2', 'C3', 'C4', 'C5', 'C6', 'C7', 'C8', 'C9', 'C10'],
  ...['RA0', 'RA1', 'RA2', 'RA3', 'RA4', 'SRA0', 'SRA1', 'SRA2', 'SRA3', 'SRA4'],
  ...['LETTER', 'LEGAL', 'TABLOID'],
])('%s is the page size that a PDF library has', (name) => {
  const { page } = new PDFDocument({ size: name });
  const size = sizeNamed(name);
  const [short = 0, long = 0] = [page.width, page.height]
    .sort((a, b) => a - b)
    .map((points) => (points / 72) * INCH);
  // A hundredth of a point is 0.0035 mm.
  expect(Math.abs((size?.short ?? 0) - short)).toBeLessThan(0.005);
  expect(Math.abs((size?.long ?? 0) - long)).toBeLessThan(0.005);
});

test('each ISO size is the one before it, halved, the half millimetre dropped', () => {
  for (const series of ['A', 'B', 'C']) {
    for (let index = 0; index < 10; index++) {
      const larger = sizeNamed(`${series}${index}`);
      const smaller = sizeNamed(`${series}${index + 1}`);
      expect(smaller).toMatchObject({ long: larger?.short, short: Math.floor((larger?.long ?? 0) / 2) });
    }
  }
});

test('names are read in any case; `iso-` says an ISO A size expressly', () => {
  expect(sizeNamed('Letter')).toBe(sizeNamed('letter'));
  expect(sizeNamed('dl')).toBe(sizeNamed('DL'));
  expect(sizeNamed('iso-a2')).toMatchObject({ short: 420, long: 594 });
  expect(sizeNamed('ISO-A10')).toMatchObject({ short: 26, long: 37 });
  expect(sizeNamed('iso-b5')).toBeUndefined();
  expect(sizeNamed('us-a3')).toBeUndefined();
  expect(sizeNamed('constructor')).toBeUndefined();
  expect(sizeNamed('__proto__')).toBeUndefined();
});

test('a plain ISO A name has a US namesake where there is such an envelope', () => {
  expect(usNamesake('A2')?.name).toBe('us-a2');
  expect(usNamesake('a10')?.name).toBe('us-a10');
  expect(usNamesake('A5')).toBeUndefined();
  expect(usNamesake('iso-a2')).toBeUndefined();
  expect(usNamesake('B2')).toBeUndefined();
});

test('every size has its short side first, and a name of its own', () => {
  const names = [...sizeNames()].map((name) => name.toLowerCase());
  expect(new Set(names).size).toBe(names.length);
  for (const name of names) expect(sizeNamed(name)?.short).toBeLessThan(sizeNamed(name)?.long ?? 0);
});

test('every row names sources that are known', () => {
  for (const [, , , sources] of [...ISO_SIZES, ...US_SHEETS, ...US_CARDS]) {
    for (const id of sources.split(';')) expect(SOURCES.has(id), id).toBe(true);
  }
});
