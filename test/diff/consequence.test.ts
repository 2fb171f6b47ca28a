/*
 * What follows on paper, one edit at a time, for an envelope of the metric bench. Each row is reasoned from the paper: what
 * has to be cut, marked, trimmed or glued otherwise when that line changes.
 */
import { describe, expect, test } from 'vitest';
import { compareTexts, onlyChange } from '../support/compare.js';

const PAPERS = `units mm

paper chart {
  title: "Chart paper"
  sheet: 450 x 320
  weight: 120 gsm
  caliper: 0.15
  grain: long
  price: 2
  stock: 40
}

paper slate like chart {
  title: "Slate-blue text"
}
`;

const recipe = (size: string): string => `${PAPERS}
envelope a6-tides {
  title: "Tide card, A6"
  note: "Dry it flat."
  tags: tides, flat
  card: 148 x 105
  ease: 5
  ${size}
  bulk: 1
  corners: folded, notched
  paper: chart
  tape: 6
  tolerance: 0.8
}
`;

const DERIVED = recipe('seam: 12');
const FIXED = recipe('blank: 210');

type Row = readonly [why: string, recipe: string, from: string, to: string, consequences: string];

const ROWS: readonly Row[] = [
  ['the blank grows by two seams, and every mark by one', DERIVED, 'seam: 12', 'seam: 14', 'recut rescore'],
  ['a larger face needs a larger blank', DERIVED, 'ease: 5', 'ease: 8', 'recut rescore'],
  ['the lining is cut from paper too', DERIVED, 'tape: 6', 'tape: 6\n  liner: inset 4', 'recut'],
  [
    'a lining from another paper',
    DERIVED,
    'tape: 6',
    'tape: 6\n  liner: inset 4\n  liner-paper: slate',
    'recut restock',
  ],
  ['a lining set further in is smaller', recipe('liner: inset 4'), 'inset 4', 'inset 9', 'recut'],
  [
    'the hinge moves to the short edge: tall side flaps are cut blunt, and glued to each other',
    DERIVED,
    'ease: 5',
    'ease: 5\n  opens: end',
    'rescore retrim reglue',
  ],
  ['marks that are stated lie elsewhere', FIXED, 'ease: 5', 'ease: 5\n  side-mark: 92', 'rescore'],
  ['a face of another proportion on the same square', FIXED, 'ease: 5', 'ease: 8 x 4', 'rescore'],
  ['a larger face on the same square', FIXED, 'ease: 5', 'ease: 6', 'rescore'],
  ['no ears are left to crease', DERIVED, 'corners: folded', 'corners: notched', 'rescore retrim'],
  [
    'a tip rounded a little has tape along its edges still',
    DERIVED,
    'ease: 5',
    'ease: 5\n  flap: rounded 12',
    'retrim',
  ],
  [
    'a very round tip has its tape across',
    DERIVED,
    'ease: 5',
    'ease: 5\n  flap: rounded 30',
    'retrim reglue',
  ],
  [
    'tips of side flaps lie under the bottom flap',
    DERIVED,
    'ease: 5',
    'ease: 5\n  sides: rounded 6',
    'retrim',
  ],
  ['a pointed flap stays the point that it was', DERIVED, 'ease: 5', 'ease: 5\n  flap: pointed', 'none'],
  ['nothing sticks a flap that is tucked in', DERIVED, 'tape: 6', 'tape: 6\n  fasten: tuck', 'reglue'],
  ['a wax seal holds the flap', DERIVED, 'tape: 6', 'tape: 6\n  fasten: seal', 'reglue'],
  ['wider tape', DERIVED, 'tape: 6', 'tape: 10', 'reglue'],
  ['another paper', DERIVED, 'paper: chart', 'paper: slate', 'restock'],
  ['no paper', DERIVED, 'paper: chart', 'paper: default', 'restock'],
  ['the same name on a heavier paper', DERIVED, '120 gsm', '130 gsm', 'restock'],
  [
    'a notch stands two calipers back, if that is over 0.5 mm',
    DERIVED,
    'caliper: 0.15',
    'caliper: 0.3',
    'restock retrim',
  ],
  ['another sheet', DERIVED, '450 x 320', '480 x 330', 'restock'],
  ['its grain runs the other way', DERIVED, 'grain: long', 'grain: short', 'restock'],
  ['what a sheet costs', DERIVED, 'price: 2', 'price: 3', 'none'],
  ['how much is left', DERIVED, 'stock: 40', 'stock: 39', 'none'],
  ['what the paper is called on the sheet', DERIVED, '"Chart paper"', '"Chart paper, printed"', 'wording'],
  ['what would line it, if it were lined', DERIVED, 'tape: 6', 'tape: 6\n  liner-paper: slate', 'none'],
  ['title', DERIVED, '"Tide card, A6"', '"Tides, A6"', 'wording'],
  ['note', DERIVED, '"Dry it flat."', '"Dry it flat.", "Press it."', 'wording'],
  ['tags', DERIVED, 'tides, flat', 'tides', 'wording'],
  ['how far the hand may be off', DERIVED, 'tolerance: 0.8', 'tolerance: 1', 'none'],
  ['a thicker card in the same envelope', DERIVED, 'bulk: 1', 'bulk: 1.5', 'none'],
  ['what is expected', DERIVED, 'tape: 6', 'tape: 6\n  expect blank = 210', 'none'],
  ['what goes in', DERIVED, 'tape: 6', 'tape: 6\n  contents: 10 g', 'none'],
];

describe('what follows on paper', () => {
  test.each(ROWS)('%s', (_, before, from, to, consequences) => {
    expect(before).toContain(from);
    const change = onlyChange(compareTexts(before, before.replace(from, to)));
    expect(change.written.length).toBeGreaterThan(0);
    expect(change.consequences.join(' ')).toBe(consequences);
    const back = onlyChange(compareTexts(before.replace(from, to), before));
    expect(back.consequences.join(' ')).toBe(consequences);
  });
});

test('a paper of which nobody knows the weight is a paper like others', () => {
  const unweighed = DERIVED.replace('  weight: 120 gsm\n', '');
  expect(
    onlyChange(compareTexts(unweighed, unweighed.replace('450 x 320', '480 x 330'))).consequences,
  ).toEqual(['restock']);
  expect(onlyChange(compareTexts(unweighed, DERIVED)).consequences).toEqual(['restock']);
});

test('one paper for both, and then another for the lining: the envelope itself is of what it was', () => {
  const lined = recipe('liner: inset 4\n  liner-paper: chart');
  const { consequences } = onlyChange(
    compareTexts(lined, lined.replace('liner-paper: chart', 'liner-paper: slate')),
  );
  expect(consequences).toEqual(['restock']);
});

test('a flat envelope that becomes a box asks for all of it', () => {
  const box = DERIVED.replace('ease: 5', 'ease: 5\n  depth: 10')
    .replace('corners: folded, notched', 'corners: notched')
    .replace('"Tide card', '"Tide box')
    .replace('paper: chart', 'paper: slate')
    .replace('tape: 6', 'fasten: tuck');
  expect(onlyChange(compareTexts(DERIVED, box)).consequences).toEqual([
    'recut',
    'restock',
    'rescore',
    'retrim',
    'reglue',
    'wording',
  ]);
});

const UNCHANGED: readonly (readonly [why: string, from: string, to: string])[] = [
  ['a card named instead of measured', '148 x 105', 'A6'],
  ['a card written the other way round', '148 x 105', '105 x 148'],
  ['a length in another unit', 'seam: 12', 'seam: 1.2 cm'],
  ['a sum that comes to the same', 'seam: 12', 'seam: 2 * 6'],
  ['both sides of a size that are alike', 'ease: 5', 'ease: 5 x 5'],
  ['tags in another order', 'tides, flat', 'flat, tides'],
  ['a thickness in another unit', 'caliper: 0.15', 'caliper: 150 um'],
  ['a sheet written the other way round', '450 x 320', '320 x 450'],
  ['a default put back that nothing had replaced', 'tape: 6', 'tape: 6\n  shift: default'],
  ['a block of its own that nobody uses', 'paper slate', 'style unused {\n  seam: 3\n}\n\npaper slate'],
];

describe('no change', () => {
  test.each(UNCHANGED)('%s', (_, from, to) => {
    expect(DERIVED).toContain(from);
    expect(compareTexts(DERIVED, DERIVED.replace(from, to))).toEqual({ changes: [], shared: [] });
  });
});
