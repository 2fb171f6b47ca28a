/* The cut sheet as a PDF, read back by an independent reader. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stages } from '../../src/drawing/stages/stages.js';
import { cutSheetPdf } from '../../src/emit/cut-sheet/cut-sheet-pdf.js';
import { cutSheet } from '../../src/emit/cut-sheet/sheet.js';
import type { EmitOptions, Job } from '../../src/emit/emitter.js';
import { anyEnvelope } from '../support/arbitraries.js';
import { halfLetter, job, jobOf } from '../support/jobs.js';
import { emitted } from '../support/emitted.js';
import { type PdfPage, pdfPages, type Run, wordsOnPage } from '../support/pdf-pages.js';

const NOTE =
  'The winter tables go out in these, sixty at a time. Print the flap first: the harbour mark wants a hard stop. ';
const LONG_TITLE = 'Half-letter card for the tide tables of the long winter '.repeat(6).slice(0, 300);

const box = (): Job =>
  job({
    face: { width: 145, height: 112 },
    depth: 6,
    bulk: 4,
    corners: { bottom: 'notched', seal: 'notched' },
  });

const pagesOf = async (of: Job, options: Partial<EmitOptions> = {}): Promise<readonly PdfPage[]> =>
  pdfPages(await emitted(cutSheetPdf, of, options));

/** The jobs whose pages are looked at more than once are drawn once. */
const drawn = new Map<Job, Promise<readonly PdfPage[]>>();

function drawnOnce(of: Job): Promise<readonly PdfPage[]> {
  const pages = drawn.get(of) ?? pagesOf(of);
  drawn.set(of, pages);
  return pages;
}

const JOBS: readonly (readonly [string, Job])[] = [
  ['flat', halfLetter({ note: [NOTE] })],
  ['box', box()],
  ['shifted', job({ face: { width: 150, height: 105 }, shift: 6 })],
  ['opened at the end', job({ face: { width: 110, height: 153 } })],
  [
    'a title of 300 characters and long notes',
    halfLetter({ title: LONG_TITLE, note: [NOTE.repeat(12), NOTE] }),
  ],
  ['a title without a space', halfLetter({ title: 'x'.repeat(300), note: ['y'.repeat(400)] })],
  ['notes of several pages', halfLetter({ note: Array.from({ length: 40 }, () => NOTE.repeat(3)) })],
  ['very small', job({ face: { width: 55, height: 40 }, seam: 5 })],
  ['very large', job({ face: { width: 4200, height: 3400 }, seam: 20 }, { units: 'in' })],
  ['very long', job({ face: { width: 900, height: 300 } })],
];

test.each([
  ['letter, for inches', halfLetter(), null, 8.5 * 72, 11 * 72],
  ['A4, for millimetres', box(), null, (210 / 25.4) * 72, (297 / 25.4) * 72],
  ['A4, asked for', halfLetter(), 'a4' as const, (210 / 25.4) * 72, (297 / 25.4) * 72],
  ['legal, asked for', box(), 'legal' as const, 8.5 * 72, 14 * 72],
])('pages are exactly %s', async (_, of, page, width, height) => {
  for (const made of await pagesOf(of, { page })) {
    expect(made.width).toBeCloseTo(width, 3);
    expect(made.height).toBeCloseTo(height, 3);
  }
});

test.each([
  ['a flat one', halfLetter({ note: [NOTE] })],
  ['a box', box()],
])('%s takes three pages at most', async (_, of) => {
  expect((await pagesOf(of)).length).toBeLessThanOrEqual(3);
  expect((await pagesOf(of, { page: 'a4' })).length).toBeLessThanOrEqual(3);
});

test.each(JOBS)('everything that the sheet says is on its pages: %s', async (_, of) => {
  const printed = (await drawnOnce(of)).map((page) => wordsOnPage(page).join('')).join('');
  const { name: _name, ...said } = cutSheet(of);
  const letters = (text: string): readonly string[] => [...text.replace(/\s/g, '')].sort();
  const wanted = countOf(letters(textsIn(said).join('').replaceAll('/', '⁄')));
  const there = countOf(letters(printed.replaceAll('/', '⁄')));
  for (const [letter, count] of wanted) expect(there.get(letter) ?? 0, letter).toBeGreaterThanOrEqual(count);
});

test.each(JOBS)('each word of a flowing text is whole on a line: %s', async (title, of) => {
  if (title === 'a title without a space') return;
  const printed = new Set((await drawnOnce(of)).flatMap(wordsOnPage));
  const words = cutSheet(of).sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'steps' ? block.steps.map(({ text }) => text) : [])),
  );
  const missing = words
    .join(' ')
    .split(/[\s\u00a0]+/)
    .filter((word) => !word.includes('/') && !printed.has(word));
  expect(missing).toEqual([]);
});

test.each(JOBS)('no text overlaps another or comes near the page’s edge: %s', async (_, of) => {
  for (const page of await drawnOnce(of)) expect(faults(page)).toEqual([]);
});

test('nor whatever the envelope', { timeout: 60_000 }, async () => {
  await fc.assert(
    fc.asyncProperty(
      anyEnvelope,
      fc.constantFrom('in' as const, 'mm' as const, 'cm' as const),
      async (made, units) => {
        for (const page of await pagesOf(jobOf({ ...made, units }))) expect(faults(page)).toEqual([]);
      },
    ),
    { seed: 7, numRuns: 5 },
  );
});

test.each(JOBS)('the fold is shown before it is told, every stage of it: %s', async (_, of) => {
  const pages = await drawnOnce(of);
  const runs = pages.flatMap(({ runs: all, height }, page) =>
    all.map(({ text, y }) => ({ text, down: page * height + height - y })),
  );
  const heading = (text: string): number => runs.find((run) => run.text === text)?.down ?? Number.NaN;
  const [shown, told] = [heading('The fold, step by step'), heading('At the bench')];
  expect(shown).toBeLessThan(told);
  const between = runs.filter(({ down }) => down > shown && down < told).map(({ text }) => text);
  const words = between.join(' ').split(' ');
  for (const [index, { caption }] of stages(of.folding, of.envelope).entries())
    expect(words).toEqual(expect.arrayContaining([`${index + 1}`, ...caption.split(' ')]));
});

test('every page says which it is of how many, and the name', async () => {
  const pages = await pagesOf(halfLetter({ note: Array.from({ length: 40 }, () => NOTE.repeat(3)) }));
  expect(pages.length).toBeGreaterThan(3);
  pages.forEach((page, index) => {
    const words = wordsOnPage(page).join(' ');
    expect(words).toContain(`page ${index + 1} of ${pages.length}`);
    expect(words).toContain('half-letter');
  });
});

test('a fraction of an inch is set as one', async () => {
  const words = (await pagesOf(halfLetter())).flatMap(wordsOnPage);
  expect(words).toContain('1⁄4');
  expect(words).toContain('3⁄16');
});

test('control characters in a title do no harm', async () => {
  const [page] = await pagesOf(halfLetter({ title: 'Tide\u001b[31m\u0000 card\u202e' }));
  expect(wordsOnPage(page as PdfPage).join(' ')).toMatch(/^Tide/);
});

test('same input, same bytes', async () => {
  const [one, other] = await Promise.all([0, 1].map(() => emitted(cutSheetPdf, halfLetter())));
  expect(Buffer.compare(one as Uint8Array, other as Uint8Array)).toBe(0);
});

test('a printer’s own margin is kept, up to the widest', async () => {
  const margin = 35;
  for (const asked of [margin, 300])
    for (const page of await pagesOf(halfLetter({ note: [NOTE] }), { margin: asked })) {
      expect(faults(page)).toEqual([]);
      for (const { x, y } of page.runs) expect(Math.min(x, y)).toBeGreaterThan((margin / 25.4) * 72 - 0.5);
    }
});

/** Every text in a value, however deep. */
const textsIn = (value: unknown): readonly string[] =>
  typeof value === 'string'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.entries(value).flatMap(([key, inner]) =>
          key === 'kind' || key === 'name' ? [] : textsIn(inner),
        )
      : [];

const countOf = (letters: readonly string[]): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const letter of letters) counts.set(letter, (counts.get(letter) ?? 0) + 1);
  return counts;
};

/** Upright runs that overlap another, and runs of any kind nearer to the page's edge than 10 mm. */
function faults({ width, height, runs }: PdfPage): readonly string[] {
  const near = (10 / 25.4) * 72;
  const outside = runs.filter(
    ({ x, y, width: long, upright }) =>
      x < near || y < near || y > height - near || (upright && x + long > width - near),
  );
  const upright = runs.filter((run) => run.upright);
  const overlapping = upright.filter((one, index) =>
    upright.slice(index + 1).some((other) => overlap(one, other)),
  );
  return [
    ...outside.map(({ text }) => `near the edge: ${text}`),
    ...overlapping.map(({ text }) => `overlapped: ${text}`),
  ];
}

/** Whether the boxes from the descenders to the capitals of two runs meet. */
const overlap = (one: Run, other: Run): boolean =>
  one.x < other.x + other.width - 0.2 &&
  other.x < one.x + one.width - 0.2 &&
  one.y - 0.2 * one.size < other.y + 0.66 * other.size &&
  other.y - 0.2 * other.size < one.y + 0.66 * one.size;
