import type { Bench } from '../bench.js';
import type { Section } from '../content.js';
import { both, readMass } from '../lengths.js';

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
            text: `${both(say.exact(facts.thickness))} closed, with a card ${both(say.exact(facts.card.bulk))} thick${qualified(bench)}`,
          },
          { label: 'Mass', text: mass(bench) },
        ],
      },
    ],
  };
};

const qualified = ({ facts }: Bench): string =>
  facts.caliper.basis === 'stated' ? '' : ` (paper’s thickness ${facts.caliper.basis})`;

function mass({ facts, envelope }: Bench): string {
  if (facts.mass === null) return 'not known: the recipe names no paper with a weight';
  const contents = envelope.contents.value;
  return (
    both(readMass(facts.mass, envelope.units)) +
    (contents === null ? ', empty' : `, with contents of ${both(readMass(contents, envelope.units))}`)
  );
}
