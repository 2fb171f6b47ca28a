import { describe, expect, test } from 'vitest';
import { envelopesOf, findingsOf, resolveText } from '../support/resolve-text.js';
import { LONGEST_TEXT } from '../../src/text/longest.js';

const INCH = 25.4;

const lengthOf = (value: string, units = 'in', lets = ''): number =>
  envelopesOf(`units ${units}\n${lets}\nenvelope e { card: A5\nblank: ${value} }`)('e').blank.value?.width ??
  Number.NaN;

describe('sums', () => {
  test.each([
    ['8 1/4', 8.25],
    ['8 + 1/4', 8.25],
    ['2 * 4 + 1/4', 8.25],
    ['(2 + 2) * 2', 8],
    ['9 - 1/2 - 1/4', 8.25],
    ['16 / 2 / 2', 4],
    ['-(-8)', 8],
    ['8 in + 1/4', 8.25],
    ['3 * 2 in', 6],
    ['16 in * 50%', 8],
    ['8 in * (3 mm / 2 mm)', 12],
    ['8 in * 4 in / 2 in', 16],
    ['0 + 8 in', 8],
    ['8000 mil', 8],
  ])('%s', (value, inches) => {
    const bare = value.includes('mil') ? lengthOf(value, 'mm') : lengthOf(value);
    expect(bare).toBeCloseTo(inches * INCH, 9);
  });

  test('lets may use lets stated later', () => {
    expect(lengthOf('a', 'mm', 'let a = b + 5\nlet b = 2 * c\nlet c = 100')).toBe(205);
  });

  test('a long sum and a long chain of lets need no deep stack', () => {
    const chain = Array.from({ length: 20_000 }, (_, index) => `let b${index + 30} = b${index + 31}`);
    expect(lengthOf('b30', 'mm', `${chain.join('\n')}\nlet b20030 = 200`)).toBe(200);
    expect(lengthOf('b30', 'mm', `let b20030 = 200\n${chain.toReversed().join('\n')}`)).toBe(200);
  });

  test('a chain of lets as long as a file may be comes to its value; a longer one is refused as a file', () => {
    const stepped = (from: number, length: number): string =>
      Array.from({ length }, (_, index) => `let n${from + index} = n${from + index + 1} + 1`).join('\n');
    const longest = `${stepped(10_000, 38_000)}\nlet n48000 = 1`;
    expect(longest.length).toBeGreaterThan(0.9 * LONGEST_TEXT);
    expect(lengthOf('n10000 / 1000', 'mm', longest)).toBeCloseTo(38.001, 9);
    const { diagnostics } = resolveText(stepped(10_000, 42_000));
    expect(diagnostics.map(({ problem }) => problem.name)).toEqual(['limit']);
  });
});

describe('a bare number', () => {
  test('takes the unit of the next item that is one number with a unit', () => {
    const { card } = envelopesOf('units mm\nenvelope e { card: 5 1/2 x 8 1/2 in }')('e');
    expect(card.value.width).toBeCloseTo(8.5 * INCH, 9);
    const marks = envelopesOf('units in\nenvelope e { card: A5\nside-mark: 128, 127 mm }')('e').sideMarks;
    expect(marks.value).toEqual([128, 127]);
  });

  test('is read in the units of the file it is written in', () => {
    const files = { 'house.plica': 'units in\nlet hand = 1/2\nlet factor = 2\nstyle house { ease: hand }' };
    const envelope = envelopesOf(
      'units mm\nuse "house.plica"\nenvelope e like house { card: A6\nseam: hand + 1 mm\nshift: factor * 3 mm }',
      { files },
    )('e');
    expect(envelope.ease.value.width).toBeCloseTo(12.7, 9);
    expect(envelope.seam.value).toBeCloseTo(13.7, 9);
    expect(envelope.shift.value).toBe(6);
    // Shown in the units of its own file.
    expect(envelope.units).toBe('mm');
    expect(envelope.step.value).toBe(0.5);
  });

  test('does not meet one of a file with other units', () => {
    const files = { 'house.plica': 'units in\nlet hand = 1/2' };
    const resolved = resolveText(
      'units mm\nuse "house.plica"\nlet both = hand + 3\nenvelope e { card: A6 }',
      { files },
    );
    expect(findingsOf(resolved)).toEqual(['wrong-kind: hand + 3']);
  });

  test('of a file without units is reported where it is written', () => {
    const files = { 'house.plica': 'let hand = 2' };
    const resolved = resolveText('units mm\nuse "house.plica"\nenvelope e { card: A6\nseam: hand }', {
      files,
    });
    expect(findingsOf(resolved)).toEqual(['missing: 2']);
    expect(resolved.diagnostics[0]?.primary.span.source.name).toBe('house.plica');
    // As a factor it is fine.
    const factor = resolveText('units mm\nuse "house.plica"\nenvelope e { card: A6\nseam: hand * 5 mm }', {
      files,
    });
    expect(findingsOf(factor)).toEqual([]);
  });
});

describe('sizes by name', () => {
  const cardOf = (card: string, lets = '') => {
    const { width, height } = envelopesOf(`units mm\n${lets}\nenvelope e { card: ${card} }`)('e').card.value;
    return [width, height].map((side) => Math.round(side * 1e6) / 1e6);
  };

  test.each([
    ['A6', [148, 105]],
    ['a6', [148, 105]],
    ['iso-a6', [148, 105]],
    ['DL', [220, 110]],
    ['letter', [279.4, 215.9]],
    ['us-a2', [139.7, 107.95]],
    // Half, a third and a quarter of a sheet, each time across whichever side is then the longer.
    ['half letter', [215.9, 139.7]],
    ['quarter letter', [139.7, 107.95]],
    ['third A4', [210, 99]],
    ['third letter', [215.9, 93.133333]],
    ['half A5', [148, 105]],
    ['quarter A5', [105, 74]],
  ])('%s', (name, sides) => {
    expect(cardOf(name)).toEqual(sides);
  });

  test('a let may be a size, and may be folded', () => {
    expect(cardOf('base', 'let base = 100 x 300')).toEqual([300, 100]);
    expect(cardOf('half base', 'let base = 100 x 300')).toEqual([150, 100]);
    expect(cardOf('quarter base', 'let base = 100 x 300')).toEqual([100, 75]);
    expect(cardOf('half base', 'let base = half A4')).toEqual([148.5, 105]);
  });
});

test('an envelope, a style or a paper may have the name of a size, and does not hide it', () => {
  const named = envelopesOf(
    'units mm\npaper a4 { }\nstyle a5 { }\nenvelope letter { card: half letter }\nenvelope e like a5 { card: a5\npaper: a4 }',
  );
  expect(named('letter').card.value.width).toBeCloseTo(215.9, 9);
  expect(named('e').card.value.width).toBe(210);
});

describe('shapes', () => {
  test.each([
    ['pointed', { kind: 'pointed' }],
    ['rounded 12', { kind: 'rounded', radius: 12 }],
    ['rounded (2 * 6)', { kind: 'rounded', radius: 12 }],
    ['rounded r', { kind: 'rounded', radius: 4 }],
    ['blunt 20', { kind: 'blunt', cut: 20, radius: 0 }],
    ['blunt 20 mm rounded 3 mm', { kind: 'blunt', cut: 20, radius: 3 }],
    ['blunt 20 rounded 3', { kind: 'blunt', cut: 20, radius: 3 }],
  ])('%s', (shape, expected) => {
    expect(
      envelopesOf(`units mm\nlet r = 4\nenvelope e { card: A5\nflap: ${shape} }`)('e').flap.value,
    ).toEqual(expected);
  });
});

test('papers: weights, sheets and counts', () => {
  const { paper } = envelopesOf(
    [
      'units in',
      'paper cover { title: "Cover"',
      'sheet: 20 x 26',
      'weight: 100 lb cover',
      'caliper: 11 mil',
      'grain: long',
      'price: 1.25',
      'stock: 40 }',
      'paper thin like cover { caliper: 8 mil }',
      'envelope e { card: A6-card',
      'paper: thin }',
      'let a6-card = iso-a6',
    ]
      .join('\n')
      .replace('A6-card', 'a6-card'),
  )('e');
  expect(paper.value).toMatchObject({ name: 'thin', title: 'thin', grain: 'long', price: 1.25, stock: 40 });
  // A copier handbook prints 270.42 for 100 lb cover; exact 270.411.
  expect(paper.value?.weight?.value).toBeCloseTo(270.411, 3);
  expect(paper.value?.caliper).toMatchObject({ origin: { kind: 'written' } });
  expect(paper.value?.caliper?.value).toBeCloseTo(0.2032, 9);
  expect(paper.value?.sheet).toMatchObject({ origin: { kind: 'inherited', from: 'cover' } });
});

test('expects: lengths in the file’s units, masses with theirs, counts plain', () => {
  const { expects } = envelopesOf(
    'units in\nenvelope e { card: iso-a6\nexpect blank = 8 1/4\nexpect mass = 20 g +- 1 g\nexpect bare = 0\nexpect per-sheet >= 2\nexpect bare < 2 mm * 3 mm\nexpect closure > -1/4 }',
  )('e');
  expect(expects.map(({ name, compare, value, tolerance }) => [name, compare, value, tolerance])).toEqual([
    ['blank', '=', 8.25 * INCH, null],
    ['mass', '=', 20, 1],
    ['bare', '=', 0, null],
    ['per-sheet', '>=', 2, null],
    ['bare', '<', 6, null],
    ['closure', '>', -6.35, null],
  ]);
});
