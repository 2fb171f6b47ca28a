import { readMass } from '../../../measure/mass.js';
import type { Bench } from '../bench.js';
import type { Section } from '../content.js';
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
