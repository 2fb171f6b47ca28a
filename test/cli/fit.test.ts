import { describe, expect, test } from 'vitest';
import { compileText } from '../support/compile-text.js';
import { plica, SOUND } from '../support/command-line.js';

const files = {
  'a.plica': `${SOUND}\npaper kraft { sheet: 12 x 12 }\n\npaper scrap { sheet: 4 x 4 }\n`,
};

describe('a recipe is printed that check accepts', () => {
  test.each([
    'fit --sheet 12x12in --shape 5x7in --as-recipe',
    'fit --sheet SRA3 --shape A6 --as-recipe',
    'fit --sheet 12x12in --shape 1x1in --depth 1/2in --as-recipe',
    'fit --card 5x7in --bulk 4mm --as-recipe',
    'fit --card A6 --as-recipe',
    'fit --card 8.5x5.5in --blank 11.25in --as-recipe',
    'fit --card 100x100mm --bulk 12mm --as-recipe',
  ])('%s', async (line) => {
    const { code, out, err } = await plica(line);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(compileText(out).recipes).toHaveLength(1);
    const { code: laidOut } = await plica('format --check a.plica', { files: { 'a.plica': out } });
    expect(laidOut).toBe(0);
    const { code: checked } = await plica('check --strict a.plica', { files: { 'a.plica': out } });
    expect(checked).toBe(0);
  });
});

test('what an old blank leaves: 11 1/4 in for a half-letter card is a seam of 1/2 in (common practice, no source)', async () => {
  const { out } = await plica('fit --card 8.5x5.5in --blank 11.25in');
  expect(out).toMatch(/Seam +0\.5 in/);
  expect(out).toMatch(/Marks +5 1\/16 in .* 7 3\/16 in/);
});

test('a blank that is too small says why', async () => {
  const { code, err } = await plica('fit --card 8.5x5.5in --blank 10in');
  expect(code).toBe(1);
  expect(err).toContain('error[creases-cross]');
});

test('which papers hold it, and which envelopes take it as they are', async () => {
  const { out } = await plica('fit a.plica --card 8x5in', { files });
  expect(out).toMatch(/kraft +12 × 12 in/);
  expect(out).not.toContain('scrap');
  // The half-letter envelope is 8 3/4 in wide by intent: 3/4 in and more are left beside a card of 8 in.
  expect(out).toMatch(/half-letter +0\.7 in/);
  const { out: larger } = await plica('fit a.plica --card 9x6in', { files });
  expect(larger).not.toContain('half-letter');
});

test('`--format json` writes what fits with lengths in mm', async () => {
  const { out } = await plica('fit a.plica --sheet 12x12in --format json', { files });
  const read = JSON.parse(out);
  expect(read).toMatchObject({ format: 'plica-fit', version: 1 });
  expect(read.sheet.width).toBeCloseTo(304.8, 9);
  expect(read.recipes).toEqual([
    { name: 'half-letter', blank: { width: 285.75, height: 285.75 }, copies: 1 },
  ]);
  expect(read.sizes.map(({ name }: { readonly name: string }) => name)).toContain('us-a7');
});

describe('what cannot be answered', () => {
  test.each([
    ['fit', 'say what to fit'],
    ['fit --sheet 12in', '`--sheet` is a size'],
    ['fit --sheet 12x12in --card A6', 'say `--sheet` or `--card`'],
    ['fit --sheet 12x12', '`--sheet 12x12` has no unit: write `12x12in` or `12x12mm`'],
    ['fit --card A6 --bulk 4', '`--bulk` is a length with its unit'],
    ['fit --sheet 12x12in --as-recipe', 'say of which shape'],
    ['fit --sheet 12x12in --blank 4in', 'go with `--card`'],
    ['fit --card A6 --shape A5', '`--shape` goes with `--sheet`'],
  ])('%s', async (line, said) => {
    const { code, out, err } = await plica(line);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(said);
  });

  test('a sheet too small for any card', async () => {
    const { code, err } = await plica('fit --sheet 20x20mm');
    expect(code).toBe(1);
    expect(err).toContain('no card fits');
  });
});
