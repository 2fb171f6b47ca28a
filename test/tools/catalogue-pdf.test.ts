import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { pdf } from '../../src/emit/catalogue/pdf/pdf.js';
import { bookOf, MANY_KINDS, writtenBy } from '../support/book.js';
import { scratch } from '../support/scratch.js';

const PARTS = { title: 'Envelopes for the tide cards', foreword: ['Measure twice.'] };

async function book(booklet = false): Promise<string> {
  const place = join(scratch(), 'tides.pdf');
  writeFileSync(place, await writtenBy(pdf, await bookOf(MANY_KINDS, PARTS), { booklet }));
  return place;
}

const ran = (program: string, ...args: string[]): string => {
  const { status, stdout, stderr } = spawnSync(program, args, { encoding: 'utf8' });
  expect([program, status, stderr]).toEqual([program, 0, '']);
  return stdout;
};

test.each([false, true])('qpdf finds nothing wrong with it (booklet: %s)', async (booklet) => {
  expect(ran('qpdf', '--check', await book(booklet))).toContain('No syntax or stream encoding errors found');
});

test('poppler sees a tagged book of half-letter pages, and reads it in its order', async () => {
  const place = await book();
  const info = ran('pdfinfo', place);
  expect(info).toMatch(/^Tagged: +yes$/m);
  expect(info).toMatch(/^Page size: +396 x 612 pts$/m);
  expect(info).toMatch(/^Title: +Envelopes for the tide cards$/m);
  const structure = ran('pdfinfo', '-struct-text', place);
  const order = [
    'Envelopes for the tide cards',
    'Measure twice.',
    'Take care',
    'Contents',
    'Measurements',
    'Half-letter tide table',
    'At the bench',
  ];
  const found = order.map((words) => structure.indexOf(words));
  expect(found.every((at) => at >= 0)).toBe(true);
  expect(structure).toMatch(/TH|Table/);
});

test('every figure of the table can be searched for and copied', async () => {
  const text = ran('pdftotext', '-layout', await book(), '-')
    .replaceAll('\u202f', ' ')
    .replaceAll('\u2044', '/');
  for (const figure of [
    '11 1/4 in',
    '285.8 mm',
    '5 1/16 in',
    '128.6 mm',
    '7 3/16 in',
    '182.6 mm',
    '8 15/16 in',
    '0.53 in',
    '13.5 mm',
  ])
    expect(text).toContain(figure);
});
