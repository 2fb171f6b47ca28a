import { closedPiece } from '../../folding/closed-piece.js';
import type { Facts } from '../../folding/facts.js';
import { printShort } from '../../measure/number.js';
import { type Readings, reasonWords, unknownWords } from '../../post/reason-words.js';
import { postStanding } from '../../post/standing.js';
import { POST_CLASSES } from '../../stock/post-classes.js';

/** How a recipe stands with every class of post that is known; the reasons are sentences with their numbers, in mm and g. */
export const postFacts = (facts: Facts) =>
  POST_CLASSES.map((post) => {
    const { accepted, reasons, surcharges, unknown } = postStanding(closedPiece(facts), post);
    return {
      class: post.name,
      accepted,
      reasons: [...reasons.map((reason) => reasonWords(reason, METRIC)), ...unknown.map(unknownWords)],
      surcharges: surcharges.map((reason) => reasonWords(reason, METRIC, 'costs no more')),
      edition: post.edition,
    };
  });

/** The names of all classes whose published limits it keeps. */
export const takenAs = (facts: Facts): readonly string[] =>
  POST_CLASSES.filter((post) => postStanding(closedPiece(facts), post).accepted === true).map(
    ({ name }) => name,
  );

const METRIC: Readings = {
  length: (mm) => `${printShort(mm, 2)} mm`,
  mass: (g) => `${printShort(g, 2)} g`,
};
