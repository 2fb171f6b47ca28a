import type { Problem } from '../diagnostics/problem.js';
import { isShort, type Margin } from './margin.js';
import { place } from './place.js';
import { least, leaveOut, most, mostCut } from './remedy.js';
import type { Finding, Rule, Subject } from './rule.js';
import { becauseOfTape, tapeNeeds } from './tape.js';
import { exact } from './words.js';

const problem: Problem = {
  name: 'flap-closes',
  severity: 'error',
  meaning: 'The closed seal flap lies on too little glued paper.',
  matters: 'Its tape or glue would miss, or stick to the card instead.',
  remedy: 'Take a larger seam or blank, a shift that lengthens the seal flap, or narrower tape.',
  example: {
    wrong: `units mm

envelope tide-card {
  card: A6
  opens: end
  seal-mark: 80
  bottom-mark: 124
}
`,
    mended: `units mm

envelope tide-card {
  card: A6
  opens: end
  seal-mark: 102
  bottom-mark: 102
}
`,
  },
  source: 'about 1 mm of paper on each side of the tape: common practice, no published source',
};

/** Length on the centre line over which the closed seal flap lies on glued paper. */
export const closureMargin: Margin = {
  name: 'the closure of the seal flap',
  made: ({ facts }) => facts.margins.closure,
  worst: ({ facts }) => facts.worst.closure,
  limit: tapeNeeds,
  because: becauseOfTape,
  blame: () => ['blank', 'seam', 'flap', 'bottom', 'sealMark', 'bottomMark', 'shift', 'tape'],
  remedies: () => [
    mostCut('flap'),
    mostCut('bottom'),
    leaveOut('blank'),
    least('blank'),
    leaveOut('sealMark', 'bottomMark'),
    leaveOut('sideMarks', 'sealMark', 'bottomMark'),
    least('seam'),
    least('shift'),
    leaveOut('flap', 'bottom', 'sides'),
    leaveOut('seam'),
    most('tape'),
    least('ease'),
  ],
};

export const flapCloses: Rule = {
  problem,
  quietAfter: ['square-blank', 'creases-cross', 'full-coverage', 'flap-shape'],
  check,
};

/** A closure shorter than the tape needs. */
function check(subject: Subject): readonly Finding[] {
  if (!isShort(closureMargin, subject)) return [];
  const { envelope, facts } = subject;
  return [
    {
      problem,
      about: 'closure',
      message: `the seal flap of ${envelope.name} closes over too little glued paper`,
      ...place(envelope, closureMargin.blame(subject)),
      label: `it lies on ${exact(envelope, facts.margins.closure)} of it`,
      why: `${exact(envelope, facts.margins.closure)} on the centre line, where ${becauseOfTape(subject)}`,
      remedies: closureMargin.remedies(subject),
    },
  ];
}
