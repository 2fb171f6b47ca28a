import type { Problem } from '../diagnostics/problem.js';
import { place } from './place.js';
import { write } from './remedy.js';
import type { Finding, Rule, Subject } from './rule.js';
import { exact, writeCorners } from './words.js';

const problem: Problem = {
  name: 'box-corners',
  severity: 'error',
  meaning: 'A box is asked to have folded corners.',
  matters: 'A folded corner piece cannot turn round a wall: it holds the walls open and bulges.',
  remedy: 'Cut the corners of a box out: `corners: notched`.',
  example: {
    wrong: `units mm

envelope shell-box {
  card: A6
  bulk: 3
  depth: 6
  corners: folded
}
`,
    mended: `units mm

envelope shell-box {
  card: A6
  bulk: 3
  depth: 6
  corners: notched
}
`,
  },
};

export const boxCorners: Rule = { problem, quietAfter: [], check };

/** A depth together with folded corners. */
function check({ envelope, facts }: Subject): readonly Finding[] {
  const corners = envelope.corners.value;
  if (facts.depth === 0 || (corners.bottom === 'notched' && corners.seal === 'notched')) return [];
  return [
    {
      problem,
      about: 'corners',
      message: `the corners of ${envelope.name} are folded, but it is a box`,
      ...place(envelope, ['corners', 'depth']),
      label: `${writeCorners(corners)}, with walls ${exact(envelope, facts.depth)} deep`,
      why: 'at the corners of a box two scores cross two others; the pieces between them must be notched',
      remedies: [write({ corners: { bottom: 'notched', seal: 'notched' } })],
      sure: true,
    },
  ];
}
