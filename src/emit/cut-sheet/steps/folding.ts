import { FLAP_NAMES } from '../../../folding/folding.js';
import { passingMarks } from '../../../folding/scores.js';
import { type Bench, endsThatAre } from '../bench.js';
import type { Step } from '../content.js';
import { both } from '../lengths.js';
import { listed, namedTogether, sentences } from '../words.js';

/** From this thickness on, in mm, a fold uses up paper that a hand can see (common practice, no source). */
const THICK = 0.3;

export function score(bench: Bench): Step {
  const caliper = bench.envelope.caliper.value;
  const folded = endsThatAre(bench, 'folded');
  return {
    title: 'Score',
    text: sentences(
      'Score every line before you fold any, on the inside. Lay a straightedge from mark to fellow mark and draw the',
      'folder along it in two light passes.',
      folded.length > 0 &&
        `Stop the ${listed(folded)} ${folded.length > 1 ? 'scores' : 'score'} where the side scores are met.`,
      caliper >= THICK &&
        `This stock is thick: set the seal and bottom scores one thickness, ${both(bench.say.exact(caliper))}, further out, towards their corners, and bend each score up over a straightedge.`,
    ),
  };
}

/** The parts of an end score that lie in folded corner pieces fold the other way. */
export function oddScores(bench: Bench): Step | null {
  const ends = endsThatAre(bench, 'folded');
  if (ends.length === 0) return null;
  return {
    title: 'Score the odd pieces',
    text:
      `The two short ends of the ${listed(ends)} score${ends.length > 1 ? 's' : ''}, beyond the side scores, fold the ` +
      'other way. Prick their ends through, turn the blank over and score them on the show side.',
  };
}

export function notchesAndTips(bench: Bench): Step | null {
  const notched = endsThatAre(bench, 'notched');
  const { tips } = bench.folding.made;
  const shaped = FLAP_NAMES.filter((flap) => tips[flap].shape !== 'pointed');
  if (notched.length === 0 && shaped.length === 0) return null;
  return {
    title:
      notched.length === 0
        ? 'Shape the tips'
        : shaped.length === 0
          ? 'Cut the notches'
          : 'Cut notches and tips',
    text: sentences(
      notched.length > 0 &&
        `Cut the notches beside the ${listed(notched)} ${notched.length > 1 ? 'flaps' : 'flap'}, from the edge inwards, and stop where the scores cross.`,
      shaped.length > 0 &&
        `Shape the ${namedTogether(shaped)} ${shaped.length > 1 ? 'tips' : 'tip'} as given above.`,
    ),
  };
}

export const foldIt = ({ folding }: Bench): Step => ({
  title: 'Fold',
  text: folding.made.second
    ? 'Bend the first scores up to a right angle, then the second ones inwards, so that every wall stands. Burnish with ' +
      'the flat of the folder, through scrap paper. Open it again.'
    : 'Fold each flap to the inside and burnish it with the flat of the folder, through scrap paper. Open it again.',
});

export function dryFold(bench: Bench): Step {
  const { facts, say } = bench;
  const folded = endsThatAre(bench, 'folded');
  return {
    title: 'Dry fold',
    text: sentences(
      'Without glue, close it in this order: left flap, right flap, bottom flap, seal flap.',
      folded.length > 0 &&
        `The corner pieces at the ${listed(folded)} go in with the side flaps and fold again with the ${listed(folded)} ${folded.length > 1 ? 'flaps' : 'flap'}.`,
      `Measure the face: ${both(say.readSize(facts.face))}.`,
      facts.depth > 0 && `Measure the walls: ${both(say.exact(facts.depth))}.`,
      'See that every tip lands as given above.',
      folded.includes('seal')
        ? `The mouth is narrowed to ${both(say.read(mouth(bench)))}: thread the card under its corners, and out again.`
        : 'The card must go in and out freely.',
    ),
  };
}

/** Folded corner pieces at the seal tie the mouth: each takes what the marks on its edge pass each other by, over √2. */
function mouth({ folding: { made } }: Bench): number {
  const taken = passingMarks(made)
    .filter(({ between }) => between.includes('seal'))
    .reduce((sum, { passes }) => sum + passes / Math.SQRT2, 0);
  return made.face.width - taken;
}
