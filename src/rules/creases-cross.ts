import type { Problem } from '../diagnostics/problem.js';
import { passingMarks } from '../folding/scores.js';
import { isShort, type Margin } from './margin.js';
import { place } from './place.js';
import { least, leaveOut } from './remedy.js';
import type { Finding, Rule, Subject } from './rule.js';
import { exact, read } from './words.js';

const problem: Problem = {
  name: 'creases-cross',
  severity: 'error',
  meaning:
    'The two marks on an edge of the blank do not pass each other, so the scores meet outside the paper.',
  matters: 'The flaps then leave the back bare at the corners of the face, and nothing overlaps for a seam.',
  remedy: 'Take a larger blank, or a larger seam.',
  example: {
    wrong: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  blank: 10
}
`,
    mended: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  blank: 11 1/4
}
`,
  },
};

/** By how much the marks on the tightest edge pass each other. */
export const crossingMargin: Margin = {
  name: 'the crossing of the scores',
  made: ({ facts }) => facts.margins.crossing,
  worst: ({ facts }) => facts.worst.crossing,
  limit: () => 0,
  because: () => 'the marks on an edge must pass each other, by 0 or more',
  blame: () => ['blank', 'sideMarks', 'sealMark', 'bottomMark', 'seam', 'face', 'ease'],
  remedies: () => [
    leaveOut('blank'),
    least('blank'),
    leaveOut('sideMarks'),
    leaveOut('sealMark', 'bottomMark'),
    leaveOut('sideMarks', 'sealMark', 'bottomMark'),
    least('seam'),
    leaveOut('seam'),
    leaveOut('blank', 'sideMarks', 'sealMark', 'bottomMark'),
  ],
};

export const creasesCross: Rule = { problem, quietAfter: ['square-blank'], check };

/** Marks that stop short of each other on an edge. */
function check(subject: Subject): readonly Finding[] {
  if (!isShort(crossingMargin, subject)) return [];
  const { envelope, facts } = subject;
  const { between, edge, passes } = tightestEdge(subject);
  const [first, second] = between.map((flap) => facts.scores[flap]);
  const [one, other] = [first?.[0]?.alongEdge ?? 0, second?.at(-1)?.alongEdge ?? 0];
  const { at, related } = place(envelope, crossingMargin.blame(subject));
  const face = `face ${read(envelope, facts.face.width)} wide and ${read(envelope, facts.face.height)} high as made`;
  return [
    {
      problem,
      about: 'crossing',
      message: `the scores of ${envelope.name} do not cross, so its back would gape`,
      at,
      label: `the two marks on an edge stop ${exact(envelope, -passes)} short of each other`,
      related: [{ span: cardSpan(subject), text: face }, ...related],
      why: `${read(envelope, one)} + ${read(envelope, other)} marked along an edge of ${read(envelope, edge)}; crossing ${exact(envelope, passes)}, must be 0 or more`,
      remedies: crossingMargin.remedies(subject),
    },
  ];
}

const tightestEdge = ({ folding }: Subject) => {
  const [first, ...others] = passingMarks(folding.made);
  if (!first) throw new Error('a blank has four edges');
  return others.reduce((least, edge) => (edge.passes < least.passes ? edge : least), first);
};

const cardSpan = ({ envelope }: Subject) => envelope.card.origin.span;
