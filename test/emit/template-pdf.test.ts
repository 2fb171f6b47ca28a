/*
 * The template, read back by a library that had no part in writing it: pages of the exact size, bars to measure on every
 * one, and the blank's lines where the facts say, once the pages are laid together by their crosses.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { EmitOptions, Job } from '../../src/emit/emitter.js';
import { template } from '../../src/emit/template-pdf/template-pdf.js';
import type { FlapName } from '../../src/folding/folding.js';
import type { Point } from '../../src/plane/point.js';
import { compileText } from '../support/compile-text.js';
import { halfLetter, job } from '../support/jobs.js';
import { emitted } from '../support/emitted.js';
import { type PdfPage, pdfPages } from '../support/pdf-pages.js';
import { pdfStrokes, type Stroke } from '../support/pdf-strokes.js';

interface Sheet extends PdfPage {
  readonly strokes: readonly Stroke[];
  readonly words: string;
}

async function sheets(of: Job, options: Partial<EmitOptions> = {}): Promise<readonly Sheet[]> {
  const bytes = await emitted(template, of, options);
  const [pages, strokes] = [await pdfPages(bytes), await pdfStrokes(bytes)];
  return pages.map((page, index) => ({
    ...page,
    strokes: strokes[index] ?? [],
    words: page.runs.map(({ text }) => text).join(' '),
  }));
}

const MM = 25.4 / 72;

/** Sheets that carry a part of the blank. Where everything is on one, what lies below the key is no part of it. */
function tilesOf(all: readonly Sheet[]): readonly Sheet[] {
  const named = all.filter(({ runs }) => runs.some(({ text }) => /^[A-Z]+\d+$/.test(text)));
  if (named.length > 0) return named;
  const whole = all.filter(({ words }) => words.includes('inside of the face'));
  return whole.map((sheet) => {
    const key = sheet.runs.find(({ text }) => text === 'Lines')?.y ?? 0;
    return { ...sheet, strokes: sheet.strokes.filter(({ from }) => from.y > key * MM) };
  });
}

/** Where each numbered cross stands on a sheet. Its number has an em of 2.6 mm, the figures at the bars less. */
const crosses = ({ runs }: Sheet): ReadonlyMap<string, Point> =>
  new Map(
    runs
      .filter(({ text, size }) => /^\d+$/.test(text) && size * MM > 2.55)
      .map(({ text, x, y }) => [text, { x: x * MM, y: y * MM }]),
  );

/** All strokes of the blank, sheets laid together so that crosses of one number meet, from the blank's lower left. */
function assembled(tiles: readonly Sheet[]): readonly Stroke[] {
  const shifts = new Map<Sheet, Point>();
  const visit = (sheet: Sheet, shift: Point): void => {
    if (shifts.has(sheet)) return;
    shifts.set(sheet, shift);
    const own = crosses(sheet);
    for (const other of tiles) {
      for (const [number, at] of crosses(other)) {
        const here = own.get(number);
        if (here) visit(other, { x: shift.x + here.x - at.x, y: shift.y + here.y - at.y });
      }
    }
  };
  if (tiles[0]) visit(tiles[0], { x: 0, y: 0 });
  expect(shifts.size).toBe(tiles.length);
  const all = tiles.flatMap((sheet) => {
    const shift = shifts.get(sheet) ?? { x: 0, y: 0 };
    return sheet.strokes.map((stroke) => moved(stroke, shift));
  });
  const edge = all.filter(isCut).flatMap(({ from, to }) => [from, to]);
  const corner = { x: -Math.min(...edge.map(({ x }) => x)), y: -Math.min(...edge.map(({ y }) => y)) };
  return all.map((stroke) => moved(stroke, corner));
}

const moved = (stroke: Stroke, by: Point): Stroke => ({
  ...stroke,
  from: { x: stroke.from.x + by.x, y: stroke.from.y + by.y },
  to: { x: stroke.to.x + by.x, y: stroke.to.y + by.y },
});

const isCut = ({ width }: Stroke): boolean => Math.abs(width - 0.5) < 1e-3;

/** Number of elements in the dash pattern, by what the key says of it. */
const DASHES = { score: 3, 'second-score': 6, 'odd-score': 6 } as const;
const isScore = ({ dashes }: Stroke): boolean =>
  Object.values(DASHES).some((first) => Math.abs((dashes[0] ?? 0) - first) < 1e-3);

/** How far a line lies from each corner's marks: at the mark a line square to the corner's diagonal has this sum. */
const ALONG: Readonly<Record<FlapName, (at: Point, width: number, height: number) => number>> = {
  bottom: ({ x, y }) => x + y,
  right: ({ x, y }, width) => width - x + y,
  seal: ({ x, y }, width, height) => width - x + height - y,
  left: ({ x, y }, _, height) => x + height - y,
};

const FLAPS = Object.keys(ALONG) as readonly FlapName[];

/** Demands that every score lies on a mark of the facts, and that every mark of the facts has its score. */
function expectTrueSize({ facts, folding }: Job, strokes: readonly Stroke[]): void {
  const { width, height } = facts.blank;
  const edge = strokes.filter(isCut).flatMap(({ from, to }) => [from, to]);
  expect(Math.abs(Math.max(...edge.map(({ x }) => x)) - width)).toBeLessThan(0.01);
  expect(Math.abs(Math.max(...edge.map(({ y }) => y)) - height)).toBeLessThan(0.01);
  const wanted = FLAPS.flatMap((flap) => facts.scores[flap].map(({ alongEdge }) => ({ flap, alongEdge })));
  const liesOn = ({ flap, alongEdge }: (typeof wanted)[number], { from, to }: Stroke): boolean =>
    [from, to].every((at) => Math.abs(ALONG[flap](at, width, height) - alongEdge) / Math.SQRT2 < 0.01);
  const scores = strokes.filter(isScore);
  for (const score of scores) expect(wanted.some((mark) => liesOn(mark, score))).toBe(true);
  for (const mark of wanted) expect(scores.some((score) => liesOn(mark, score))).toBe(true);
  for (const flap of FLAPS) {
    const { cutMark } = folding.made.tips[flap];
    if (cutMark > 0) {
      expect(strokes.some((stroke) => isCut(stroke) && liesOn({ flap, alongEdge: cutMark }, stroke))).toBe(
        true,
      );
    }
  }
}

const notched = { bottom: 'notched', seal: 'notched' } as const;
const JOBS = {
  'half-letter card': halfLetter(),
  'box with a cut tip': job({ depth: 6, corners: notched, bottom: { kind: 'blunt', cut: 8, radius: 2 } }),
  shifted: job({ shift: 8, flap: { kind: 'rounded', radius: 12 } }),
  'card A3': job({ face: { width: 428, height: 305 } }),
  'flap on the short edge, 1 : 3': job({ face: { width: 100, height: 300 } }),
  'card 50 x 35 mm': job({ face: { width: 55, height: 40 }, seam: 5 }),
  'a blank that is not square': job({ blank: { width: 230, height: 221 } }),
};
const PAGES = ['letter', 'a4', 'a3', 'tabloid', 'legal', 'fit'] as const;

test.each(Object.entries(JOBS))('%s: every line within 0.01 mm, pages laid together', async (_, of) => {
  for (const page of ['a4', 'fit'] as const)
    expectTrueSize(of, assembled(tilesOf(await sheets(of, { page }))));
});

test.each(PAGES)('the half-letter card on %s: every line within 0.01 mm', async (page) => {
  expectTrueSize(halfLetter(), assembled(tilesOf(await sheets(halfLetter(), { page }))));
});

test('every recipe of the studio has its template', async () => {
  const names = readdirSync('specs').filter((name) => name.endsWith('.plica'));
  const files = Object.fromEntries(names.map((name) => [name, readFileSync(`specs/${name}`, 'utf8')]));
  const recipes = names.flatMap((name) => compileText(files[name] ?? '', { name, files }).recipes);
  expect(recipes.length).toBeGreaterThanOrEqual(14);
  for (const recipe of recipes) {
    const all = await sheets(recipe);
    expectTrueSize(recipe, assembled(tilesOf(all)));
    expect(all[0]?.words).toContain(recipe.envelope.name);
  }
}, 60_000);

// ISO 216 for A4 and A3; ASME Y14.1 for letter and tabloid; legal: common practice. In points: mm × 72 / 25.4.
test.each([
  ['letter', 612, 792],
  ['legal', 612, 1008],
  ['tabloid', 792, 1224],
  ['a4', (210 * 72) / 25.4, (297 * 72) / 25.4],
  ['a3', (297 * 72) / 25.4, (420 * 72) / 25.4],
] as const)('%s pages are exactly as large as the paper, upright or lying', async (page, short, long) => {
  for (const { width, height } of await sheets(halfLetter(), { page })) {
    expect(Math.min(width, height)).toBeCloseTo(short, 4);
    expect(Math.max(width, height)).toBeCloseTo(long, 4);
  }
});

test('unless asked, inches come on letter and mm on A4', async () => {
  const [inches] = await sheets(halfLetter());
  expect(inches?.width).toBeCloseTo(612, 4);
  const [metric] = await sheets(job({}));
  expect(metric?.width).toBeCloseTo((210 * 72) / 25.4, 4);
});

test('every page has a bar of 100 mm, a bar of 4 in and a square of 20 mm, and says to measure them', async () => {
  for (const page of ['letter', 'a3', 'fit'] as const) {
    for (const { strokes, words } of await sheets(JOBS['box with a cut tip'], { page })) {
      const level = (length: number): boolean =>
        strokes.some(
          ({ from, to }) =>
            Math.abs(from.y - to.y) < 1e-4 && Math.abs(Math.abs(to.x - from.x) - length) < 1e-3,
        );
      const upright = (length: number): boolean =>
        strokes.some(
          ({ from, to }) =>
            Math.abs(from.x - to.x) < 1e-4 && Math.abs(Math.abs(to.y - from.y) - length) < 1e-3,
        );
      expect([level(100), level(4 * 25.4), level(20), upright(20)]).toEqual([true, true, true, true]);
      expect(words).toContain('Print at 100 %');
      expect(words).toMatch(/Measure both bars and the square/);
    }
  }
});

test('one page as large as the blank and everything beside it', async () => {
  for (const of of Object.values(JOBS)) {
    const all = await sheets(of, { page: 'fit' });
    expect(all.length).toBe(1);
    expect(all[0]?.words).toContain('Edge gauge');
    // Viewers open pages up to 14 400 units.
    expect(Math.max(all[0]?.width ?? 0, all[0]?.height ?? 0)).toBeLessThanOrEqual(14_400);
  }
});

test('a blank too large for the largest page there may be is spread over several', async () => {
  const sail = job({ face: { width: 4800, height: 3600 } });
  const all = await sheets(sail, { page: 'fit' });
  expect(Math.max(...all.flatMap(({ width, height }) => [width, height]))).toBeLessThanOrEqual(14_400);
  expectTrueSize(sail, assembled(tilesOf(all)));
});

test('pages on which nothing of the blank is drawn are left out, and none is empty', async () => {
  const large = job({ face: { width: 700, height: 500 } });
  const all = await sheets(large, { page: 'a4' });
  const tiles = tilesOf(all);
  const [row, column] = (/row 1 of (\d+), column 1 of (\d+)/.exec(tiles[0]?.words ?? '') ?? [])
    .slice(1)
    .map(Number);
  expect(tiles.length).toBeLessThan((row ?? 0) * (column ?? 0));
  expect(all[0]?.words).toContain(`How the ${tiles.length} pages lie together`);
  for (const { strokes } of tiles)
    expect(strokes.some((stroke) => isCut(stroke) || isScore(stroke))).toBe(true);
});

test('the first page says what it shows, what the lines mean, what to do, and to take care', async () => {
  const [about] = await sheets(halfLetter());
  for (const words of [
    'Half-letter card',
    'half-letter',
    'It shows the inside of the paper: lay the show side down.',
    'Blank 11 1/4 in square (285.8 mm).',
    'score on this face, folds towards you',
    'score from the other face, folds away from you',
    'Take care',
    'metal safety ruler',
    'come first',
  ]) {
    expect(about?.words).toContain(words);
  }
});

test('the key names the kinds of line that are there, and no others', async () => {
  const [flat] = await sheets(halfLetter(), { page: 'fit' });
  expect(flat?.words).not.toContain('second score');
  expect(flat?.words).not.toContain('where two pages meet');
  const [box] = await sheets(JOBS['box with a cut tip'], { page: 'fit' });
  expect(box?.words).toContain('second score, the outer edge of a wall');
  expect(box?.words).not.toContain('folds away from you');
});

test('the edge gauge has its marks at true distance', async () => {
  const all = await sheets(halfLetter());
  const gauge = all.find(({ words }) => words.includes('half-letter: seal, bottom'));
  const cut = gauge?.strokes.filter(isCut) ?? [];
  const ends = [...new Set(cut.filter(({ from, to }) => from.x === to.x).map(({ from }) => from.x))];
  const zero = Math.min(...ends);
  const marks = gauge?.strokes
    .filter(({ from, to, dashes }) => Math.abs(from.x - to.x) < 1e-4 && dashes.length === 0)
    .map(({ from }) => from.x - zero);
  // Common practice, no source: 5 1/16 and 7 3/16 in for the half-letter card.
  for (const mark of [5.0625 * 25.4, 7.1875 * 25.4]) {
    expect(marks?.some((x) => Math.abs(x - mark) < 0.01)).toBe(true);
  }
});

test('the same recipe gives the same bytes, whenever it is drawn', async () => {
  const [one, other] = [await emitted(template, halfLetter()), await emitted(template, halfLetter())];
  expect(Buffer.from(one).equals(Buffer.from(other))).toBe(true);
});

test('titles of any length and script can be printed, at any margin', async () => {
  const title = `Gezeiten (Øst) \\ \u6f6e\u6c50 \u{1F41A} ${'and so on '.repeat(40)}`;
  for (const margin of [0, 35, 500]) {
    for (const page of ['letter', 'fit'] as const) {
      const all = await sheets(halfLetter({ title }), { page, margin });
      expect(all[0]?.words).toContain('Gezeiten (Øst) \\ □□ □');
      // Where the title is too long for a page's foot, the recipe's name stands there.
      for (const { words } of all) expect(words).toContain('half-letter');
      expectTrueSize(halfLetter(), assembled(tilesOf(all)));
    }
  }
});
