import { closedPiece } from '../../../folding/closed-piece.js';
import { readMass } from '../../../measure/mass.js';
import { OPERATOR_DECIDES, type Readings, reasonWords, unknownWords } from '../../../post/reason-words.js';
import { type PostStanding, postStanding } from '../../../post/standing.js';
import { postNamed } from '../../../recipe/post-named.js';
import { postClassNamed } from '../../../stock/post-classes.js';
import type { Bench } from '../bench.js';
import type { Section, Term } from '../content.js';
import { both } from '../lengths.js';

/** What the finished envelope comes to. */
export const finished = (bench: Bench): Section => {
  const { facts, say } = bench;
  return {
    name: 'finished',
    heading: 'When it is done',
    blocks: [
      {
        kind: 'terms',
        terms: [
          {
            label: 'Thickness',
            text: `${both(say.exact(facts.thickness))} closed, with ${facts.liner ? 'its lining and ' : ''}a card ${both(say.exact(facts.card.bulk))} thick${qualified(bench)}`,
          },
          { label: 'Mass', text: mass(bench) },
          ...postTerms(bench),
        ],
      },
    ],
  };
};

/** Which thicknesses are not stated, and how they are known. */
function qualified({ facts }: Bench): string {
  const known = [
    { of: 'paper’s', basis: facts.caliper.basis },
    { of: 'lining’s', basis: facts.liner?.caliper.basis ?? 'stated' },
  ].filter(({ basis }) => basis !== 'stated');
  return known.length === 0
    ? ''
    : ` (${known.map(({ of, basis }) => `${of} thickness ${basis}`).join(', ')})`;
}

function mass({ facts, envelope }: Bench): string {
  if (facts.mass === null) {
    return envelope.paper.value?.weight
      ? 'not known: the paper of the lining states no weight'
      : 'not known: the recipe names no paper with a weight';
  }
  const contents = envelope.contents.value;
  return (
    both(readMass(facts.mass, envelope.units)) +
    (contents === null ? ', empty' : `, with contents of ${both(readMass(contents, envelope.units))}`)
  );
}

/** How it stands with each class of post that the recipe names or expects to take it. */
const postTerms = (bench: Bench): readonly Term[] =>
  postNamed(bench.envelope).flatMap((name) => {
    const post = postClassNamed(name);
    return post
      ? [{ label: 'Post', text: postText(bench, postStanding(closedPiece(bench.facts), post)) }]
      : [];
  });

function postText({ envelope, say }: Bench, standing: PostStanding): string {
  const { class: post, accepted, reasons, surcharges, unknown } = standing;
  const readings: Readings = {
    length: (mm) => both(say.exact(mm)),
    mass: (g) => both(readMass(g, envelope.units)),
  };
  const verdict =
    accepted === false
      ? `not taken: ${reasons.map((reason) => reasonWords(reason, readings)).join('; ')}`
      : accepted === null
        ? `taken as far as is known; ${unknown.map(unknownWords).join('; ')}`
        : 'taken';
  const more =
    surcharges.length > 0
      ? `; for more, since ${surcharges.map((reason) => reasonWords(reason, readings, 'costs no more')).join('; ')}`
      : '';
  return `${post.title}: ${verdict}${more}. By the table’s edition (${post.edition}); ${OPERATOR_DECIDES}.`;
}
