import { CLEAR_OF_SCORES } from '../../../folding/flap-zones.js';
import type { Bench } from '../bench.js';
import type { Step } from '../content.js';
import { both } from '../lengths.js';
import { foldsAt } from '../sections/lining.js';
import { sentences } from '../words.js';

/**
 * The lining goes in once the envelope has been folded, so that its fold finds the hinge, and before it is closed dry. Glued
 * to the flap alone and the flap closed before the glue sets: common practice, no source.
 */
export function lining(bench: Bench): Step | null {
  const { facts, envelope, folding, say } = bench;
  if (!facts.liner) return null;
  const box = folding.made.second !== null;
  const taped = folding.glue.some(({ name }) => name.startsWith('seal-'));
  return {
    title: 'Line',
    text: sentences(
      `Cut the lining as given above. Fold it ${foldsAt(bench)} from its lower edge, the side that is to show inside. Lay it on the`,
      `open blank, ${both(say.read(envelope.liner.value ?? 0))} inside the scores, its ${box ? 'folds in those' : 'fold in that'} of the seal flap.`,
      `Glue it to the seal flap only, with tape or thin glue along its edges there, ${both(say.exact(CLEAR_OF_SCORES))} clear of the`,
      `${box ? 'folds' : 'fold'}: never across its hinge, and not to the front.`,
      taped && 'Leave the place of the flap’s own tape free.',
      'Close the flap once before the glue sets, with a waste sheet between, so that the lining finds its place.',
    ),
  };
}
