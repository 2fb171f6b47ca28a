import type { Problem } from '../diagnostics/problem.js';
import { sameLength } from '../measure/slack.js';
import { place, type Property } from './place.js';
import { leaveOut, type Remedy, write } from './remedy.js';
import type { Finding, Rule, Subject } from './rule.js';
import { exact, readApart } from './words.js';

const problem: Problem = {
  name: 'opposite-scores',
  severity: 'warning',
  meaning: 'Two opposite scores lie at different distances from their corners.',
  matters:
    'It still folds, but the face moves off centre, and one of its flaps comes out longer than the other.',
  remedy: 'Use one mark for both; for a longer seal flap state a shift, or both end marks.',
  example: {
    wrong: `units mm

envelope tide-card {
  card: A6
  side-mark: 101.5, 102
}
`,
    mended: `units mm

envelope tide-card {
  card: A6
  side-mark: 101.5
}
`,
  },
};

export const oppositeScores: Rule = { problem, quietAfter: ['square-blank'], check };

interface Pair {
  readonly about: string;
  readonly flaps: readonly ['left', 'right'] | readonly ['seal', 'bottom'];
  readonly blame: readonly Property[];
  /** Whether the recipe says that they are meant to differ. */
  readonly declared: (subject: Subject) => boolean;
  readonly remedies: (marks: readonly [number, number]) => readonly Remedy[];
}

const PAIRS: readonly Pair[] = [
  {
    about: 'side',
    flaps: ['left', 'right'],
    blame: ['sideMarks'],
    declared: () => false,
    remedies: ([left, right]) => [
      write({ sideMarks: [left, left] }),
      write({ sideMarks: [right, right] }),
      leaveOut('sideMarks'),
    ],
  },
  {
    about: 'end',
    flaps: ['seal', 'bottom'],
    blame: ['sealMark', 'bottomMark'],
    declared: ({ envelope: { shift, sealMark, bottomMark } }) =>
      shift.value > 0 || (sealMark.value !== null && bottomMark.value !== null),
    remedies: ([seal, bottom]) => [
      leaveOut('sealMark', 'bottomMark'),
      write({ sealMark: seal, bottomMark: bottom }),
      write({ sealMark: seal, bottomMark: seal }),
      write({ sealMark: bottom, bottomMark: bottom }),
    ],
  },
];

/** Each pair of opposite scores whose marks differ, unless a shift or a pair of end marks declares it. */
function check(subject: Subject): readonly Finding[] {
  const { envelope, folding } = subject;
  return PAIRS.flatMap(({ about, flaps: [one, other], blame, declared, remedies }): readonly Finding[] => {
    const marks = [folding.made.first[one].alongEdge, folding.made.first[other].alongEdge] as const;
    if (sameLength(...marks) || declared(subject)) return [];
    const [first, second] = readApart(envelope, ...marks);
    return [
      {
        problem,
        about,
        message: `the ${one} and ${other} scores of ${envelope.name} lie at different distances from their corners`,
        ...place(envelope, blame),
        label: `${one} mark ${first}, ${other} mark ${second}`,
        why: `the marks differ by ${exact(envelope, Math.abs(marks[0] - marks[1]))}, which moves the face ${exact(envelope, Math.abs(marks[0] - marks[1]) / 2 / Math.SQRT2)} off the blank's centre`,
        remedies: remedies(marks),
      },
    ];
  });
}
