import { FLAP_NAMES, type FlapName } from '../../../folding/folding.js';
import { type Passing, passingMarks } from '../../../folding/scores.js';
import { sameLength } from '../../../measure/slack.js';
import type { Bench } from '../bench.js';
import type { Block, Cell, Reading, Section } from '../content.js';
import { both } from '../lengths.js';
import { capitalised } from '../words.js';

/** Where each score lies: its mark along the edges, and its distance square from the corner. */
export function marks(bench: Bench): Section {
  return {
    name: 'marks',
    heading: 'Mark and score, on the inside',
    blocks: [
      {
        kind: 'table',
        headings: ['From corner', 'Mark, along both edges', 'Score, square from the corner'],
        rows: FLAP_NAMES.flatMap((flap) => scoreRows(bench, flap)),
      },
      passing(bench),
    ],
  };
}

const scoreRows = ({ facts, say }: Bench, flap: FlapName): readonly (readonly Cell[])[] => {
  const scores = facts.scores[flap];
  return scores.map(({ alongEdge, fromCorner }, index) => [
    scores.length === 1 ? flap : `${flap}, ${index === 0 ? 'first' : 'second'}`,
    say.read(alongEdge),
    say.read(fromCorner),
  ]);
};

/** By how much marks pass each other: in a sentence when all edges are alike, else edge by edge. */
function passing(bench: Bench): Block {
  const edges = passingMarks(bench.folding.made);
  const [{ passes }] = edges as [Passing];
  if (edges.every((edge) => sameLength(edge.passes, passes)))
    return { kind: 'paragraph', text: `On every edge ${whoseMarks(bench)} ${passEachOther(bench, passes)}.` };
  return {
    kind: 'table',
    headings: ['Edge', capitalised(`${whoseMarks(bench)} pass each other by`)],
    rows: edges.map((edge) => [edge.between.join(' to '), passed(bench, edge.passes)]),
  };
}

/** Which marks are compared: of a box, its walls lie between them. */
export const whoseMarks = ({ folding }: Bench): string =>
  folding.made.second ? 'the first mark from one corner and the second from the other' : 'the marks';

/** `pass each other by 1 in (25.4 mm)` */
export const passEachOther = ({ say }: Bench, passes: number): string =>
  `${passes < 0 ? 'stop short of each other by' : 'pass each other by'} ${both(say.read(Math.abs(passes)))}`;

function passed({ say }: Bench, passes: number): Reading {
  const { read, other } = say.read(Math.abs(passes));
  return { read: passes < 0 ? `short by ${read}` : read, other };
}
