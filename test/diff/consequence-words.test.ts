/* What follows, as it is said to whoever has the envelope made: of a lining that it is the lining, of a blank that it is the blank. */
import { expect, test } from 'vitest';
import { consequenceWords } from '../../src/diff/consequence-words.js';
import { compareTexts, onlyChange } from '../support/compare.js';

const recipe = (...lines: readonly string[]): string =>
  [
    'units mm',
    'paper chart { weight: 120 gsm }',
    'paper slate { weight: 90 gsm }',
    'paper marbled { weight: 80 gsm }',
    'envelope tides {',
    'card: A6',
    ...lines,
    '}',
    '',
  ].join('\n');

const PLAIN = ['paper: chart', 'blank: 210'] as const;
const LINED = [...PLAIN, 'liner: inset 4', 'liner-paper: slate'] as const;
const KEEPS = 'the blank keeps its size.';

/** What is written before and after, and what is said of it. */
const ROWS: readonly (readonly [
  why: string,
  before: readonly string[],
  after: readonly string[],
  said: string,
])[] = [
  [
    'a larger blank takes all the rest with it',
    LINED,
    LINED.map((line) => line.replace('210', '214')),
    'Cut anew: the blank is another one.',
  ],
  ['a lining that comes, from paper of its own', PLAIN, LINED, `Cut a lining: ${KEEPS}`],
  ['a lining that goes', LINED, PLAIN, `Leave the lining out: ${KEEPS}`],
  [
    'a lining set further in',
    LINED,
    [...PLAIN, 'liner: inset 9', 'liner-paper: slate'],
    `Cut the lining anew: ${KEEPS}`,
  ],
  [
    'other paper for the lining alone',
    LINED,
    LINED.map((line) => line.replace('slate', 'marbled')),
    'Take other paper for the lining.',
  ],
  [
    'other paper for the envelope',
    LINED,
    LINED.map((line) => line.replace('chart', 'marbled')),
    `Take other paper: ${KEEPS}`,
  ],
  [
    'a lining comes, and the flap is cut otherwise',
    PLAIN,
    [...LINED, 'flap: rounded 12'],
    `Cut a lining: ${KEEPS} Trim anew: tips or notches are cut otherwise; what is cut shorter already wants a new blank.`,
  ],
  [
    // Scored and cut otherwise: no sentence may say of the marks, or of the cut, that they stay.
    'the hinge moves to the short edge of the same square',
    PLAIN,
    [...PLAIN, 'opens: end'],
    'Score anew: the blank keeps its size; marks or scores differ. Trim anew: tips or notches are cut otherwise; what is cut shorter already wants a new blank. Glue anew: seams, tape or fastening differ.',
  ],
  // A heavier card: the mass grows, and what is made is made as before.
  [
    'what goes in weighs more',
    PLAIN,
    [...PLAIN, 'contents: 40 g'],
    'Nothing to do: paper and words stay as they are.',
  ],
];

test.each(ROWS)('%s', (_, before, after, said) => {
  expect(consequenceWords(onlyChange(compareTexts(recipe(...before), recipe(...after))))).toBe(said);
});
