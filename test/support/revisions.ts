import fc from 'fast-check';

type Values = Readonly<Record<string, readonly string[]>>;

/** Texts that a property may have, in a file of any units; some spell one value in several ways. */
const ENVELOPE: Values = {
  title: ['"Tides"', '"Tides of the north shore"'],
  note: ['"Dry it flat."', '"Dry it flat.", "Then score."'],
  tags: ['tides', 'tides, flat', 'flat, tides'],
  bulk: ['1 mm', '3/16 in', 'hand * 3'],
  contents: ['12 g', '1 oz', '28.349523125 g'],
  depth: ['0 mm', '6 mm', '1/4 in', '6.35 mm'],
  ease: ['5 mm', '1/4 in', '6.35 mm', '7 mm x 6 mm', 'hand * 8'],
  face: ['8 3/4 in x 5 3/4 in', '160 mm x 115 mm'],
  seam: ['12 mm', '1/2 in', '12.7 mm', '0.5 in', '3/4 in'],
  blank: ['210 mm', '11 1/4 in', '285.75 mm'],
  'side-mark': ['5 in', '127 mm', '5 in, 5 1/16 in'],
  'seal-mark': ['7 1/8 in', '128 mm'],
  'bottom-mark': ['7 1/8 in', '128 mm'],
  opens: ['side', 'end'],
  shift: ['0 mm', '6 mm'],
  flap: ['pointed', 'rounded 12 mm', 'blunt 15 mm rounded 4 mm', 'rounded hand'],
  bottom: ['pointed', 'blunt 10 mm', 'rounded 6 mm'],
  sides: ['pointed', 'rounded 6 mm'],
  corners: ['folded', 'notched', 'folded, notched'],
  fasten: ['glue', 'tuck', 'seal'],
  step: ['hand', '1/16 in', '0.5 mm', '1.5875 mm'],
  tolerance: ['0.8 mm', '1/32 in'],
  paper: ['chart', 'slate'],
  tape: ['6 mm', '10 mm'],
  liner: ['inset 1/8 in', 'inset 3.175 mm', 'inset 6 mm'],
  'liner-paper': ['chart', 'slate'],
};

const CARDS = [
  'A6',
  'quarter letter',
  '148 mm x 105 mm',
  '105 mm x 148 mm',
  '8 1/2 in x 5 1/2 in',
  'half letter',
];

const PAPER: Values = {
  title: ['"Chart paper"', '"Slate"'],
  sheet: ['450 mm x 320 mm', 'SRA3', '12 in x 12 in'],
  weight: ['120 gsm', '80 lb text', '65 lb cover'],
  caliper: ['0.15 mm', '150 um', '10 mil'],
  grain: ['long', 'short'],
  price: ['0.4', '2'],
  stock: ['12', '40'],
};

const EXPECTS = [
  'blank = 11 1/4 in',
  'blank = 285.75 mm',
  'side-mark = 5 in +- 1/16 in',
  'closure > 2 in',
  'layers <= 5',
].map((text) => `expect ${text}`);

/** Of two that say one thing twice, a block states the first. */
const CLASHES = [
  ['blank', 'seam'],
  ['face', 'ease'],
] as const;

/** Some statements of a table, each with one of its values, or put back. */
const statements = (table: Values): fc.Arbitrary<readonly string[]> =>
  fc
    .tuple(
      ...Object.entries(table).map(([property, values]) =>
        fc.oneof(
          { weight: 14, arbitrary: fc.constant([]) },
          { weight: 5, arbitrary: fc.constantFrom(...values).map((text) => [`${property}: ${text}`]) },
          { weight: 1, arbitrary: fc.constant([`${property}: default`]) },
        ),
      ),
    )
    .map((lines) => withoutClashes(lines.flat()));

const withoutClashes = (lines: readonly string[]): readonly string[] => {
  const states = (property: string): boolean => lines.some((line) => line.startsWith(`${property}:`));
  const left = CLASHES.flatMap(([one, other]) => (states(one) ? [other] : []));
  return lines.filter((line) => !left.some((property) => line.startsWith(`${property}:`)));
};

const block = (header: string, ...lists: readonly (readonly string[])[]): string =>
  [`${header} {`, ...lists.flat().map((line) => `  ${line}`), '}', ''].join('\n');

/** What may be written in a file that the studio revises: two papers, a style like another, and two envelopes. */
const parts = {
  units: fc.constantFrom('mm', 'in'),
  hand: fc.constantFrom('0.5 mm', '1/16 in', '1 mm'),
  chart: statements(PAPER),
  slate: statements(PAPER),
  house: statements(ENVELOPE),
  bench: statements(ENVELOPE),
  tides: statements(ENVELOPE),
  moon: statements(ENVELOPE),
  houseExpects: fc.subarray(EXPECTS),
  tidesExpects: fc.subarray(EXPECTS),
  cards: fc.tuple(fc.constantFrom(...CARDS), fc.constantFrom(...CARDS)),
  /** Whether end marks are stated, or a shift: in several blocks together they say one thing twice. */
  endMarks: fc.boolean(),
  likes: fc.tuple(
    fc.constantFrom('', ' like house', ' like bench'),
    fc.constantFrom(' like bench', ' like tides'),
  ),
};

type Parts = {
  readonly [Part in keyof typeof parts]: (typeof parts)[Part] extends fc.Arbitrary<infer T> ? T : never;
};

const textOf = (written: Parts): string =>
  linesOf(written)
    .split('\n')
    .filter((line) => !line.startsWith(written.endMarks ? '  shift:' : '  bottom-mark:'))
    .join('\n');

const linesOf = (written: Parts): string =>
  [
    `units ${written.units}`,
    `let hand = ${written.hand}`,
    block('paper chart', written.chart),
    block('paper slate like chart', written.slate),
    block('style house', written.house.filter(ofStyles), written.houseExpects),
    block('style bench like house', written.bench.filter(ofStyles)),
    block(
      `envelope tides${written.likes[0]}`,
      [`card: ${written.cards[0]}`],
      written.tides,
      written.tidesExpects,
    ),
    block(`envelope moon${written.likes[1]}`, [`card: ${written.cards[1]}`], written.moon),
  ].join('\n');

const ofStyles = (line: string): boolean => !/^(title|note):/.test(line);

/** A file as it was and as it is: all written anew, or a part or two. */
export const revisions: fc.Arbitrary<readonly [before: string, after: string]> = fc
  .tuple(
    fc.record(parts),
    fc.record(parts),
    fc.oneof(fc.constant(Object.keys(parts)), {
      weight: 3,
      arbitrary: fc.subarray(Object.keys(parts), { minLength: 1, maxLength: 2 }),
    }),
  )
  .map(([before, other, revised]) => [
    textOf(before),
    textOf({
      ...before,
      ...Object.fromEntries(Object.entries(other).filter(([part]) => revised.includes(part))),
    }),
  ]);
