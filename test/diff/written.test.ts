/* Statements that differ: by value, wherever they are written. */
import { describe, expect, test } from 'vitest';
import type { Place, WrittenChange } from '../../src/diff/difference.js';
import { compareTexts, onlyChange } from '../support/compare.js';

const BEFORE = `units in

let hand = 1/16

paper kraft {
  weight: 118 gsm
  caliper: 6 mil
}

style house {
  ease: 1/4
  seam: 1/2
  step: hand
  paper: kraft
  expect crossing > 3/4
}

envelope half-letter like house {
  title: "Half-letter tide table"
  card: half letter
  flap: rounded 3/8
  expect blank = 11 1/4
}
`;

const placeWords = (place: Place): string => (place.kind === 'here' ? 'here' : `${place.kind} ${place.name}`);

const side = (value: WrittenChange['before']): string =>
  value === null
    ? 'nothing'
    : `${value.text}${value.reading === null ? '' : ` (${value.reading})`}, ${placeWords(value.place)}`;

const words = ({ property, before, after }: WrittenChange): string =>
  `${property}: ${side(before)} → ${side(after)}`;

type Edit = readonly [from: string, to: string];

const edited = (...edits: readonly Edit[]): string =>
  edits.reduce((text, [from, to]) => {
    expect(text).toContain(from);
    return text.replace(from, to);
  }, BEFORE);

const writtenOf = (after: string): readonly string[] =>
  onlyChange(compareTexts(BEFORE, after)).written.map(words);

describe('a statement that comes to something else', () => {
  const ROWS: readonly (readonly [why: string, from: string, to: string, said: string])[] = [
    ['in the envelope', 'rounded 3/8', 'rounded 1/2', 'flap: rounded 3/8, here → rounded 1/2, here'],
    ['in its style', 'ease: 1/4', 'ease: 3/8', 'ease: 1/4, style house → 3/8, style house'],
    ['in its paper', '118 gsm', '120 gsm', 'weight: 118 gsm, paper kraft → 120 gsm, paper kraft'],
    [
      'a weight in pounds says little by itself',
      '118 gsm',
      '80 lb text',
      'weight: 118 gsm, paper kraft → 80 lb text (118.4117 gsm), paper kraft',
    ],
    ['taken out', '  flap: rounded 3/8\n', '', 'flap: rounded 3/8, here → nothing'],
    ['put back', 'rounded 3/8', 'default', 'flap: rounded 3/8, here → default, here'],
    ['stated anew', 'card: half', 'bulk: 1/8\n  card: half', 'bulk: nothing → 1/8, here'],
    [
      'put over what the style states',
      'card: half',
      'seam: 5/8\n  card: half',
      'seam: 1/2, style house → 5/8, here',
    ],
    [
      'a let that comes to something else',
      'hand = 1/16',
      'hand = 1/8',
      'step: hand (1/16 in), style house → hand (1/8 in), style house',
    ],
    [
      'a let in place of a number',
      'rounded 3/8',
      'rounded hand',
      'flap: rounded 3/8, here → rounded hand (rounded 1/16 in), here',
    ],
    ['a sum', 'seam: 1/2', 'seam: 1/2 + 1/16', 'seam: 1/2, style house → 1/2 + 1/16 (9/16 in), style house'],
    [
      'a size by name',
      'half letter',
      'quarter letter',
      'card: half letter (8 1/2 x 5 1/2 in), here → quarter letter (5 1/2 x 4 1/4 in), here',
    ],
    ['a title', 'tide table"', 'tides"', 'title: "Half-letter tide table", here → "Half-letter tides", here'],
    [
      'what is expected',
      '= 11 1/4',
      '= 11 1/4 +- 1/8',
      'expect blank: = 11 1/4, here → = 11 1/4 +- 1/8, here',
    ],
    ['what a style expects', '> 3/4', '> 7/8', 'expect crossing: > 3/4, style house → > 7/8, style house'],
    [
      'what is expected besides',
      'expect blank',
      'expect seal-mark = 7 3/16\n  expect blank',
      'expect seal-mark: nothing → = 7 3/16, here',
    ],
    [
      'a let in what is expected',
      '= 11 1/4',
      '= (11 + hand) +- hand',
      'expect blank: = 11 1/4, here → = (11 + hand) +- hand (= 11 1/16 in +- 1/16 in), here',
    ],
    [
      'a class of post that is expected',
      'expect blank',
      'expect post us-letter\n  expect blank',
      'expect post: nothing → us-letter, here',
    ],
    [
      'a class of post that a style expects',
      'expect crossing',
      'expect  post  us-letter\n  expect crossing',
      'expect post: nothing → us-letter, style house',
    ],
    [
      'with more space than need be',
      '  expect blank = 11 1/4',
      '  expect   blank   =   11',
      'expect blank: = 11 1/4, here → =   11, here',
    ],
  ];
  test.each(ROWS)('%s', (_, from, to, said) => {
    expect(writtenOf(edited([from, to]))).toEqual([said]);
  });

  test('a class of post that is expected no longer', () => {
    const before = edited([
      'expect blank',
      'expect post us-letter\n  expect post de-kompakt\n  expect blank',
    ]);
    const after = before.replace('  expect post us-letter\n', '');
    expect(onlyChange(compareTexts(before, after)).written.map(words)).toEqual([
      'expect post: us-letter, here → nothing',
    ]);
  });

  test('a fixed blank takes the place of the style’s seam', () => {
    expect(writtenOf(edited(['card: half', 'blank: 11 1/4\n  card: half']))).toEqual([
      'seam: 1/2, style house → nothing',
      'blank: nothing → 11 1/4, here',
    ]);
  });

  test('another paper is one change, however much the two differ', () => {
    const other = 'paper laid {\n  weight: 70 lb text\n}\n\nstyle house';
    expect(writtenOf(edited(['style house', other], ['paper: kraft', 'paper: laid']))).toEqual([
      'paper: kraft, style house → laid, style house',
    ]);
  });

  test('two expectations of one figure are told apart by what they expect', () => {
    const before = edited(['expect blank = 11 1/4', 'expect blank >= 11\n  expect blank <= 12']);
    const after = before.replace('>= 11', '>= 11 1/8');
    expect(onlyChange(compareTexts(before, after)).written.map(words)).toEqual([
      'expect blank: >= 11, here → >= 11 1/8, here',
    ]);
  });

  test('the same text in other units', () => {
    const text =
      'units in\nenvelope tides {\n  card: 8 x 5\n  ease: 1/4\n  seam: 1/2\n  step: 1/16\n  tolerance: 1/32\n}\n';
    const [card, ...others] = onlyChange(
      compareTexts(text, text.replace('units in', 'units cm')),
    ).written.map(words);
    expect(card).toBe('card: 8 x 5 (8 x 5 in), here → 8 x 5 (8 x 5 cm), here');
    expect(others.map((said) => said.replace(/:.*/, ''))).toEqual(['ease', 'seam', 'step', 'tolerance']);
  });

  test('another text in other units', () => {
    const text = 'units in\nenvelope tides {\n  card: 8 x 5\n}\n';
    const after = text.replace('units in', 'units cm').replace('8 x 5', '20 x 12');
    expect(onlyChange(compareTexts(text, after)).written.map(words)).toEqual([
      'units: in, here → cm, here',
      'card: 8 x 5 (8 x 5 in), here → 20 x 12 (20 x 12 cm), here',
    ]);
  });

  test('units that only what is left out goes by', () => {
    const text = 'units in\nenvelope tides {\n  card: 148 mm x 105 mm\n}\n';
    expect(onlyChange(compareTexts(text, text.replace('units in', 'units mm'))).written.map(words)).toEqual([
      'units: in, here → mm, here',
    ]);
  });
});

/* Where a text does not tell its value (a name, a sum), the value is read out beside it, as a recipe could write it. */
describe('what a name or a sum comes to', () => {
  const HEAD = 'units in\n\nlet hand = 1/16\n\npaper kraft {\n  weight: 118 gsm\n}\n\n';
  const tides = (line: string): string =>
    `${HEAD}envelope tides {\n  card: 8 1/2 x 5 1/2\n  paper: kraft\n  ${line}\n}\n`;
  const ROWS: readonly (readonly [line: string, reading: string | null])[] = [
    ['seam: hand * 8', '1/2 in'],
    ['ease: hand * 4', '1/4 in'],
    ['ease: hand * 4 x hand * 6', '1/4 x 3/8 in'],
    // 3 mm is on no ruler of sixteenths, and is read as what it is.
    ['seam: 1 mm * 12', '12 mm'],
    ['ease: hand * 4 x 5 mm', '1/4 in x 5 mm'],
    ['tolerance: hand / 3', '0.02083 in'],
    ['side-mark: hand * 88', '5 1/2 in'],
    ['side-mark: hand * 88, hand * 90', '5 1/2 in, 5 5/8 in'],
    ['side-mark: hand * 88, 5 1/2', '5 1/2 in'],
    ['flap: blunt (hand * 4)', 'blunt 1/4 in'],
    ['flap: blunt (hand * 4) rounded (hand * 2)', 'blunt 1/4 in rounded 1/8 in'],
    ['flap: rounded (hand * 2)', 'rounded 1/8 in'],
    ['flap: pointed', null],
    ['flap: blunt 1/4', null],
    ['liner: inset (hand * 2)', 'inset 1/8 in'],
    ['liner: inset 1/8', null],
    ['contents: 2 * 3 g', '6 g'],
    ['seam: 1/2 in', null],
    ['blank: 11 1/4', null],
    ['ease: 1/4 x 3/8', null],
    ['tags: x-mas', null],
  ];
  test.each(ROWS)('%s', (line, reading) => {
    const { written } = onlyChange(compareTexts(tides('title: "Tides"'), tides(line)));
    const property = line.slice(0, line.indexOf(':'));
    expect(written.find((change) => change.property === property)?.after?.reading).toBe(reading);
  });

  test.each([
    ['layers < 2 * 3', '< 6'],
    ['mass < 2 * 10 g', '< 20 g'],
    ['bare < 2 mm * 10 mm', '< 20 mm²'],
    ['blank = hand * 180', '= 11 1/4 in'],
    ['blank = hand * 180 +- hand', '= 11 1/4 in +- 1/16 in'],
    ['blank = 11 1/4 +- 1/16', null],
  ])('expect %s', (expected, reading) => {
    const { written } = onlyChange(compareTexts(tides('title: "Tides"'), tides(`expect ${expected}`)));
    expect(written.find(({ property }) => property.startsWith('expect'))?.after?.reading).toBe(reading);
  });
});

describe('no statement differs', () => {
  const ROWS: readonly (readonly [why: string, edits: readonly Edit[]])[] = [
    ['another spelling', [['seam: 1/2', 'seam: 12.7 mm']]],
    ['a let in place of its value', [['step: hand', 'step: 1/16']]],
    [
      'a let that is called otherwise',
      [
        ['let hand', 'let rule'],
        ['step: hand', 'step: rule'],
      ],
    ],
    [
      'moved from the style into the envelope',
      [
        ['  seam: 1/2\n', ''],
        ['card: half', 'seam: 1/2\n  card: half'],
      ],
    ],
    ['said again in the envelope', [['card: half', 'seam: 0.5 in\n  card: half']]],
    [
      'what is expected moved into the style',
      [
        ['  expect blank = 11 1/4\n', ''],
        ['expect crossing', 'expect blank = 285.75 mm\n  expect crossing'],
      ],
    ],
    ['expected twice', [['expect blank', 'expect crossing > 0.75\n  expect blank']]],
    [
      'a style that is called otherwise',
      [
        ['style house', 'style bench'],
        ['like house', 'like bench'],
      ],
    ],
  ];
  test.each(ROWS)('%s', (_, edits) => {
    expect(compareTexts(BEFORE, edited(...edits))).toEqual({ changes: [], shared: [] });
  });

  test('other units, where all that goes by them is stated with a unit of its own', () => {
    const text =
      'units in\nenvelope tides {\n  card: A6\n  ease: 5 mm\n  seam: 12 mm\n  step: 0.5 mm\n  tolerance: 0.8 mm\n}\n';
    expect(compareTexts(text, text.replace('units in', 'units mm'))).toEqual({ changes: [], shared: [] });
  });
});
