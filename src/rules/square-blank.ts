import type { Problem } from '../diagnostics/problem.js';
import { sameLength } from '../measure/slack.js';
import { place } from './place.js';
import { leaveOut, write } from './remedy.js';
import type { Finding, Rule, Subject } from './rule.js';
import { exact, readApart } from './words.js';

const problem: Problem = {
  name: 'square-blank',
  severity: 'error',
  meaning: 'The two sides of the blank differ.',
  matters:
    'All four scores are square to the diagonals: on an oblong blank neighbouring flaps no longer meet alike.',
  remedy: 'Fix one side for both, or leave the blank to follow from the card.',
  example: {
    wrong: `units mm

envelope tide-card {
  card: A6
  blank: 210 x 205
}
`,
    mended: `units mm

envelope tide-card {
  card: A6
  blank: 210
}
`,
  },
};

export const squareBlank: Rule = { problem, quietAfter: [], check };

/** A fixed blank with two sides. */
function check({ envelope, facts: { blank } }: Subject): readonly Finding[] {
  if (sameLength(blank.width, blank.height)) return [];
  const [width, height] = readApart(envelope, blank.width, blank.height);
  const square = (side: number) => write({ blank: { width: side, height: side } });
  return [
    {
      problem,
      about: 'blank',
      message: `the blank of ${envelope.name} is not square`,
      ...place(envelope, ['blank']),
      label: `one side is ${width}, the other ${height}`,
      why: `the sides differ by ${exact(envelope, Math.abs(blank.width - blank.height))}; they must be equal`,
      remedies: [
        square(Math.max(blank.width, blank.height)),
        square(Math.min(blank.width, blank.height)),
        leaveOut('blank'),
      ],
    },
  ];
}
