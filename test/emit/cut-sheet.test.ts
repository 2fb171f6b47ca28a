/* What a cut sheet says: which steps it has, and that its figures are the envelope's. */
import { expect, test } from 'vitest';
import type { Block, Cell, CutSheet } from '../../src/emit/cut-sheet/content.js';
import { cutSheet } from '../../src/emit/cut-sheet/sheet.js';
import type { Job } from '../../src/emit/emitter.js';
import { LETTER } from '../../src/folding/front-zones.js';
import { zones } from '../../src/folding/zones.js';
import type { Wishes } from '../support/envelopes.js';
import { halfLetter, job } from '../support/jobs.js';
import { type Read, readLengths } from '../support/read-lengths.js';

const section = (sheet: CutSheet, name: string) => sheet.sections.find((one) => one.name === name);

const blocks = (sheet: CutSheet, name: string): readonly Block[] => section(sheet, name)?.blocks ?? [];

const steps = (of: Job): readonly string[] =>
  blocks(cutSheet(of), 'steps').flatMap((block) =>
    block.kind === 'steps' ? block.steps.map(({ title }) => title) : [],
  );

const table = (sheet: CutSheet, name: string): readonly (readonly Cell[])[] =>
  blocks(sheet, name).flatMap((block) => (block.kind === 'table' ? block.rows : []));

/** Every word of a section, cells too. */
const wordsOf = (sheet: CutSheet, name: string): string =>
  JSON.stringify(blocks(sheet, name)).replaceAll('\u00a0', ' ');

const box = (wishes: Wishes = {}): Job =>
  job({
    face: { width: 145, height: 112 },
    depth: 6,
    bulk: 4,
    corners: { bottom: 'notched', seal: 'notched' },
    ...wishes,
  });

test('the half-letter card by the trade’s figures', () => {
  // Common practice, no source: ease 1/4 in, seam 1/2 in, sixteenths. The readings are worked out by hand:
  // D = 11.25·√2 = 15.9099 in; side mark (D − 8.75)/√2 = 5.063 → 5 1/16; seal mark (D − 5.75)/√2 = 7.184 → 7 3/16.
  const sheet = cutSheet(halfLetter());
  expect(wordsOf(sheet, 'cut')).toContain('11 1/4 × 11 1/4 in (285.8 × 285.8 mm), square');
  expect(wordsOf(sheet, 'cut')).toContain('15 15/16 in (404.1 mm), the two alike');
  expect(table(sheet, 'marks')).toEqual([
    ['left', { read: '5 1/16 in', other: '128.6 mm' }, { read: '3 9/16 in', other: '90.9 mm' }],
    ['right', { read: '5 1/16 in', other: '128.6 mm' }, { read: '3 9/16 in', other: '90.9 mm' }],
    ['seal', { read: '7 3/16 in', other: '182.6 mm' }, { read: '5 1/16 in', other: '129.1 mm' }],
    ['bottom', { read: '7 3/16 in', other: '182.6 mm' }, { read: '5 1/16 in', other: '129.1 mm' }],
  ]);
  // 5 1/16 + 7 3/16 − 11 1/4 = 1.
  expect(wordsOf(sheet, 'marks')).toContain('On every edge the marks pass each other by 1 in (25.4 mm).');
  expect(wordsOf(sheet, 'dry-fold')).toContain('8 3/4 × 5 3/4 in');
});

test('a flat envelope with folded bottom ears and a notched seal pair has all its steps, in order', () => {
  expect(steps(halfLetter())).toEqual([
    'Find the grain',
    'Cut the blank',
    'Name the corners',
    'Mark',
    'Decorate',
    'Score',
    'Score the odd pieces',
    'Cut the notches',
    'Fold',
    'Dry fold',
    'Glue the lower seams',
    'Lay the seal strip',
    'Finish',
  ]);
});

test('a square card has no long edge, nor if its sides are written in two units', () => {
  const { summary } = cutSheet(job({ card: { width: 4.2 * 25.4, height: 106.68 } }));
  expect(4.2 * 25.4).not.toBe(106.68);
  expect(summary).toMatch(/, hinged on an edge\.$/);
});

test('a step that is not needed is not there', () => {
  expect(steps(box())).not.toContain('Score the odd pieces');
  expect(steps(halfLetter({}, { corners: { bottom: 'folded', seal: 'folded' } }))).not.toContain(
    'Cut the notches',
  );
  expect(steps(halfLetter())).not.toContain('Glue the centre seam');
});

test('the flap is closed as the recipe says', () => {
  expect(steps(halfLetter({}, { fasten: 'tuck' }))).toContain('Tuck the flap');
  expect(steps(halfLetter({}, { fasten: 'seal' }))).toContain('Close with a seal');
});

test('a tucked flap goes behind what it reaches', () => {
  // Half-letter: 5 1/16 + 5 1/16 in of flap on a face 5 3/4 in high. Upright: 72 + 72 mm on 153.
  expect(wordsOf(cutSheet(halfLetter({}, { fasten: 'tuck' })), 'steps')).toContain('behind the bottom flap.');
  const upright = job({ face: { width: 110.5, height: 153 }, seam: 12, fasten: 'tuck' });
  expect(wordsOf(cutSheet(upright), 'steps')).toContain('behind the side flaps.');
});

test('a flap that closes on joined side flaps has its centre seam glued before the lower ones', () => {
  // An upright face, opened at the end: the seal flap does not reach the bottom flap.
  const open = job({ face: { width: 110.5, height: 153 }, seam: 12 });
  expect(open.folding.centreSeam).toBe(true);
  const titles = steps(open);
  expect(titles.indexOf('Glue the centre seam')).toBeLessThan(titles.indexOf('Glue the lower seams'));
  expect(titles.indexOf('Glue the centre seam')).toBeGreaterThan(titles.indexOf('Dry fold'));
});

test('a lining is cut to its box, folded at the hinge, and glued to the flap only', () => {
  // Face 8.7504 × 5.7452 in, flap 7.1875/√2 = 5.0823 in; 1/8 in inside, and 8 mm inside the flap's taped edges: 8 1/2 in wide,
  // 5.7452 − 0.125 = 5.620 in up to the fold, and 5.0823 − 0.315·√2 = 4.637 in above it.
  const lined = halfLetter({}, { liner: 25.4 / 8 });
  const cut = wordsOf(cutSheet(lined), 'cut');
  expect(cut).toContain('8 1/2 × 10 1/4 in');
  expect(cut).toContain('5 5/8 in (142.8 mm) from its lower edge');
  expect(cut).toContain('5/16 in (8 mm) inside the edges of its tip');
  const titles = steps(lined);
  expect(titles[titles.indexOf('Line') - 1]).toBe('Fold');
  expect(titles[titles.indexOf('Line') + 1]).toBe('Dry fold');
  expect(wordsOf(cutSheet(lined), 'steps')).toMatch(
    /Glue it to the seal flap only, .*never across its hinge/,
  );
  expect(wordsOf(cutSheet(lined), 'finished')).toContain('with its lining and a card');
});

test('the lining of a box is folded twice, and one that no tape meets keeps to its inset', () => {
  const lined = box({ liner: 4, fasten: 'tuck' });
  expect(lined.facts.liner?.folds).toHaveLength(2);
  const words = wordsOf(cutSheet(lined), 'cut');
  expect(words).toMatch(/Lining’s fold","text":"\S+ mm \(\S+ in\) and \S+ mm \(\S+ in\) from its lower edge/);
  expect(words).not.toContain('clear of the flap’s tape');
});

test('nothing is said of a lining where there is none', () => {
  expect(JSON.stringify(cutSheet(halfLetter()))).not.toMatch(/lining|lined|"Line"/i);
});

test('a box has a second score at every corner, nearer to it by the wall’s mark', () => {
  const rows = table(cutSheet(box()), 'marks');
  expect(rows.map(([name]) => name)).toContain('seal, second');
  expect(rows).toHaveLength(8);
});

test('scores that differ from edge to edge are told edge by edge', () => {
  const { folding, ...shifted } = job({ face: { width: 150, height: 105 }, shift: 6 });
  const rows = table(cutSheet({ folding, ...shifted }), 'marks').slice(4);
  expect(rows.map(([edge]) => edge)).toEqual([
    'bottom to right',
    'seal to right',
    'seal to left',
    'bottom to left',
  ]);
});

test('thick stock is scored with its thickness allowed for', () => {
  expect(wordsOf(cutSheet(halfLetter({}, { caliper: 0.4 })), 'steps')).toContain('This stock is thick');
  expect(wordsOf(cutSheet(halfLetter()), 'steps')).not.toContain('This stock is thick');
});

test('tape is cut to lengths rounded down, and told in all', () => {
  // Lower strips: 4 1/16 in + 1 mm − 6 mm·√2 = 95.7 mm, down to 3 3/4 in; seal strips: 3 1/8 in − 4 mm = 75.4 mm, down to
  // 2 15/16 in (worked out in test/folding/seams.test.ts); in all 2·(95.70 + 75.38) = 342.2 mm, 13.47 in.
  const sheet = cutSheet(halfLetter());
  expect(table(sheet, 'tape')).toEqual([
    ['Lower seams', { read: '3 3/4 in', other: '95.3 mm' }, '2'],
    ['Edges of the seal flap', { read: '2 15/16 in', other: '74.6 mm' }, '2'],
  ]);
  expect(wordsOf(sheet, 'tape')).toContain('13 1/2 in (342.2 mm) in all');
});

test('the front says how it is held, and a small one that no zone is given', () => {
  expect(wordsOf(cutSheet(halfLetter()), 'zones')).toContain('fold at the top');
  const upright = job({ face: { width: 110, height: 160 } });
  expect(wordsOf(cutSheet(upright), 'zones')).toContain('fold on the left');
  expect(wordsOf(cutSheet(job({ face: { width: 110, height: 80 } })), 'zones')).toContain(
    'Smaller than 140 × 90 mm (5.51 × 3.54 in)',
  );
});

test.each([
  [
    'far from the seams',
    { face: { width: 160, height: 110 }, flap: { kind: 'blunt' as const, cut: 60, radius: 0 } },
    'no seam lies beneath',
  ],
  ['between the seams', {}, 'Its middle line is free of them'],
  [
    'over where the seams meet',
    { face: { width: 150, height: 105 }, shift: 6 },
    'On its middle line that leaves',
  ],
  ['over nothing but seams', { face: { width: 100, height: 100 }, seam: 30 }, 'They take up its middle line'],
  [
    'of a few millimetres',
    { face: { width: 50, height: 35 }, seam: 6, flap: { kind: 'blunt' as const, cut: 22, radius: 0 } },
    'Too small to decorate',
  ],
])('what a flap %s says of raised work', (_, wishes, said) => {
  expect(wordsOf(cutSheet(job({ face: { width: 160, height: 100 }, ...wishes })), 'zones')).toContain(said);
});

test('the side to show lies face down, so that words on the flap stand upside down', () => {
  expect(wordsOf(cutSheet(halfLetter()), 'steps')).toMatch(/lies face down.*seal flap stand upside down/);
});

test('hot wax has its own caution, and local rules go before', () => {
  expect(wordsOf(cutSheet(halfLetter({}, { fasten: 'seal' })), 'cautions')).toContain('Hot wax');
  expect(wordsOf(cutSheet(halfLetter()), 'cautions')).toMatch(
    /sharp blade.*Guard fitted.*Hot tools.*come before these/,
  );
});

test('findings come first, and an error says that the recipe must be mended', () => {
  const sound = halfLetter();
  const problem = {
    name: 'card-fits',
    severity: 'error' as const,
    meaning: '',
    matters: '',
    remedy: '',
    example: { wrong: '', mended: '' },
  };
  const found = {
    problem,
    severity: 'error' as const,
    message: 'the card of half-letter does not fit',
    primary: { span: sound.envelope.span, text: '' },
    related: [],
    why: 'it is 0.1 in too wide',
    help: 'write `ease: 3/8`',
    fix: null,
  };
  const sheet = cutSheet({ ...sound, diagnostics: [found] });
  expect(sheet.sections[0]?.name).toBe('findings');
  expect(wordsOf(sheet, 'findings')).toContain('Mend what is listed as an error first');
  expect(wordsOf(sheet, 'findings')).toContain(
    'The card of half-letter does not fit. It is 0.1 in too wide. To mend it: write `ease: 3/8`. [card-fits]',
  );
  expect(section(cutSheet(sound), 'findings')).toBeUndefined();
});

/** What the sheet may say beside the facts and the folding: the trade's small distances, in mm. */
const TRADE = [0.5, 1, 3, 15];

test.each([
  ['flat, in', halfLetter()],
  ['flat, mm', job({ face: { width: 153, height: 110 } })],
  ['flat, cm', job({ face: { width: 153, height: 110 } }, { units: 'cm' })],
  ['box', box()],
  ['shifted', job({ face: { width: 150, height: 105 }, shift: 6 })],
  ['opened at the end', job({ face: { width: 110, height: 153 } })],
  ['blunt by default', job({ face: { width: 215, height: 104 } })],
  [
    'rounded',
    halfLetter({}, { flap: { kind: 'rounded', radius: 12 }, sides: { kind: 'blunt', cut: 9, radius: 3 } }),
  ],
  [
    'fixed blank and marks',
    halfLetter({}, { blank: { width: 285, height: 285 }, sealMark: 180, bottomMark: 181 }),
  ],
])('every length on the sheet is one of the envelope’s: %s', (_, of) => {
  const { envelope, facts, folding } = of;
  const { face } = facts;
  const known = [
    ...numbersIn({ ...facts, made: { ...folding.made, faceCentre: null } }),
    ...numbersIn([envelope.tolerance, envelope.tape, envelope.step].map(({ value }) => value)),
    ...Object.values(facts.flaps).flatMap(({ height }) => [face.width - height, face.height - height]),
    ...facts.tape.flatMap(({ length }) => [length, roundedDown(length, envelope.step.value)]),
    ...zoneLengths(of),
    ...['width', 'height'].flatMap((side) => marksPassing(of, facts.blank[side as 'width' | 'height'])),
    envelope.tape.value + 2,
    ...TRADE,
  ];
  const read = readLengths(JSON.stringify(cutSheet(of)), {
    units: envelope.units,
    step: envelope.step.value,
  });
  expect(read.length).toBeGreaterThan(60);
  const stray = read.filter(
    ({ mm, within }) => !known.some((length) => Math.abs(Math.abs(length) - Math.abs(mm)) <= within),
  );
  expect(stray.map(({ text }: Read) => text)).toEqual([]);
});

const roundedDown = (length: number, step: number): number => Math.floor(length / step + 1e-9) * step;

/** What is told of the zones: from the seal flap's fold, across it, and from the edges of the front. */
function zoneLengths({ envelope, folding, facts }: Job): readonly number[] {
  const { flap, front } = zones(envelope, folding);
  const fold = facts.diagonal / 2 - (facts.scores.seal.at(-1)?.fromCorner ?? 0);
  const parts = flap.print ? [flap.print, ...flap.raised] : [];
  return [
    ...parts.flatMap((part) => part.map(({ y }) => y - fold)),
    ...parts.map((part) => Math.max(...part.map(({ x }) => x)) - Math.min(...part.map(({ x }) => x))),
    ...numbersIn([front.address, front.stamp].map((zone) => ({ ...zone, outline: null }))),
    LETTER.smallest.width,
    LETTER.smallest.height,
  ];
}

/** First mark of one corner and outermost of the other, less the edge between them: for every two corners. */
const marksPassing = ({ facts }: Job, edge: number): readonly number[] =>
  [facts.scores.seal, facts.scores.bottom].flatMap((end) =>
    [facts.scores.left, facts.scores.right].map(
      (side) => (end[0]?.alongEdge ?? 0) + (side.at(-1)?.alongEdge ?? 0) - edge,
    ),
  );

const numbersIn = (value: unknown): readonly number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(numbersIn)
      : [];

test('a reading and its fellow in the other system are one length', () => {
  const readings: { read: string; other: string }[] = [];
  for (const name of ['marks', 'dry-fold', 'margins'])
    for (const cell of table(cutSheet(halfLetter()), name).flat())
      if (typeof cell !== 'string') readings.push(cell);
  expect(readings.length).toBeGreaterThan(25);
  for (const { read, other } of readings) {
    const [own, beside] = readLengths(`${read} ${other}`, { units: 'in', step: 25.4 / 16 });
    expect(Math.abs((own?.mm ?? 0) - (beside?.mm ?? 99)), `${read}, ${other}`).toBeLessThanOrEqual(
      (own?.within ?? 0) + (beside?.within ?? 0),
    );
  }
});
