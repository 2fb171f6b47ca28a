import type { Problem } from '../diagnostics/problem.js';
import { SHORTEST_SEAM } from '../folding/glue.js';
import { isShort, type Margin } from './margin.js';
import { place } from './place.js';
import { least, leaveOut, most, mostCut } from './remedy.js';
import type { Finding, Rule, Subject } from './rule.js';
import { becauseOfTape, tapeNeeds } from './tape.js';
import { exact } from './words.js';

const problem: Problem = {
  name: 'seam-holds',
  severity: 'error',
  meaning: 'The lower seams are too narrow for their tape, or too short to hold.',
  matters: 'The pocket opens at the bottom when the card goes in.',
  remedy: 'Take a larger seam or blank, or narrower tape.',
  example: {
    wrong: `units mm

envelope tide-card {
  card: A6
  blank: 193.5
}
`,
    mended: `units mm

envelope tide-card {
  card: A6
  blank: 210
}
`,
  },
  source:
    'about 1 mm of paper on each side of the tape: common practice, no published source; the shortest seam is our judgement',
};

/** Width of the overlap of a side flap and the bottom flap. */
export const overlapMargin: Margin = {
  name: 'the overlap of the lower seams',
  made: ({ facts }) => facts.margins.seamOverlap,
  worst: ({ facts }) => facts.worst.seamOverlap,
  limit: tapeNeeds,
  because: becauseOfTape,
  blame: () => ['blank', 'seam', 'sideMarks', 'bottomMark', 'sealMark', 'face', 'tape'],
  remedies: () => [
    leaveOut('blank'),
    least('seam'),
    least('blank'),
    leaveOut('sideMarks'),
    leaveOut('sealMark', 'bottomMark'),
    leaveOut('sideMarks', 'sealMark', 'bottomMark'),
    leaveOut('seam'),
    most('tape'),
  ],
};

/** Usable length of each lower seam. It is far from any limit but on very small or short flaps: no worst case. */
export const lengthMargin: Margin = {
  name: 'the length of the lower seams',
  made: ({ facts }) => facts.seamLength,
  worst: () => null,
  limit: () => SHORTEST_SEAM,
  because: ({ envelope }) =>
    `a seam shorter than ${exact(envelope, SHORTEST_SEAM)} does not hold (our judgement)`,
  blame: () => ['sides', 'bottom', 'face', 'ease', 'sealMark', 'bottomMark', 'card'],
  remedies: () => [
    mostCut('sides'),
    mostCut('bottom'),
    leaveOut('sides', 'bottom'),
    leaveOut('sealMark', 'bottomMark'),
    leaveOut('face'),
    least('ease'),
    least('shift'),
  ],
};

const WORDS = [
  {
    margin: overlapMargin,
    about: 'overlap',
    message: 'are too narrow for their tape',
    label: 'an overlap of',
  },
  { margin: lengthMargin, about: 'length', message: 'are too short to hold', label: 'a seam of' },
];

export const seamHolds: Rule = {
  problem,
  quietAfter: ['square-blank', 'creases-cross', 'flap-shape'],
  check,
};

/** The first of the two margins that is short. */
function check(subject: Subject): readonly Finding[] {
  const { envelope } = subject;
  const short = WORDS.find(({ margin }) => isShort(margin, subject));
  if (!short) return [];
  const { margin, about, message, label } = short;
  const made = exact(envelope, margin.made(subject) ?? 0);
  return [
    {
      problem,
      about,
      message: `the lower seams of ${envelope.name} ${message}`,
      ...place(envelope, margin.blame(subject)),
      label: `leaves ${label} ${made}`,
      why: `${made}, where ${margin.because(subject)}`,
      remedies: margin.remedies(subject),
    },
  ];
}
