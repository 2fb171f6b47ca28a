/*
 * steps/: what is done at the bench, one function a step: while the paper lies flat, folding it, gluing it.
 * In: the bench. Out: a step, or null where this envelope does not need it.
 * Refuses to know: the steps before and after it.
 */
import { CLEAR_OF_SCORES } from '../../../folding/flap-zones.js';
import { passingMarks } from '../../../folding/scores.js';
import { sameLength } from '../../../measure/slack.js';
import type { Bench } from '../bench.js';
import type { Step } from '../content.js';
import { both } from '../lengths.js';
import { sentences } from '../words.js';
import { passEachOther, whoseMarks } from '../sections/marks.js';

export const lookToTheGrain = (): Step => ({
  title: 'Find the grain',
  text:
    'Bend the sheet both ways: it gives more easily along the grain. Let the grain run along an edge of the blank, so ' +
    'that all four folds meet it alike. Make one envelope in scrap paper first.',
});

export const cutTheBlank = ({ facts, envelope, say }: Bench): Step => ({
  title: 'Cut the blank',
  text:
    `Cut ${both(say.readSize(facts.blank))}. Measure both diagonals: each is ${both(say.read(facts.diagonal))}. ` +
    `If they differ by more than ${both(say.read(envelope.tolerance.value))}, cut again.`,
});

export const nameTheCorners = (): Step => ({
  title: 'Name the corners',
  text:
    'Lay the blank show side down, one corner towards you. Pencil the names lightly on the inside: bottom nearest you, ' +
    'seal furthest away, left and right.',
});

export function makeTheMarks(bench: Bench): Step {
  const { made } = bench.folding;
  const edges = passingMarks(made);
  const alike = edges.every(({ passes }) => sameLength(passes, edges[0]?.passes ?? 0));
  return {
    title: 'Mark',
    text: sentences(
      `From each corner measure its ${made.second ? 'two marks' : 'mark'} along both edges that meet there.`,
      made.second && 'The first bounds the face, the second the wall.',
      alike
        ? `On every edge ${whoseMarks(bench)} ${passEachOther(bench, edges[0]?.passes ?? 0)}: if not, measure again.`
        : 'On each edge the marks pass each other by the figure given above: if not, measure again.',
    ),
  };
}

export const decorate = ({ say }: Bench): Step => ({
  title: 'Decorate',
  text:
    'Do it now, while the blank is flat. The side to show lies face down: turn the blank over like a page, the seal corner ' +
    'still furthest from you. There, words on the seal flap stand upside down. Keep to the zones given above, and ' +
    `${both(say.exact(CLEAR_OF_SCORES))} clear of every score.`,
});
