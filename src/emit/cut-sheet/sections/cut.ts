import type { Bench } from '../bench.js';
import type { Section, Term } from '../content.js';
import { both } from '../lengths.js';
import { paperWords } from '../paper-words.js';
import { liningTerms } from './lining.js';

/** The blank, how to tell that it is square, and what it is cut from; then its lining. */
export function cut(bench: Bench): Section {
  const { facts, say, envelope } = bench;
  const { width, height } = facts.blank;
  const square = Math.abs(width - height) < SQUARE;
  return {
    name: 'cut',
    heading: 'Cut',
    blocks: [
      {
        kind: 'terms',
        terms: [
          { label: 'Blank', text: `${both(say.readSize(facts.blank))}, ${square ? 'square' : 'not square'}` },
          {
            label: 'Diagonals',
            text:
              `${both(say.read(facts.diagonal))}, the two alike. ` +
              `Recut if they differ by more than ${both(say.read(envelope.tolerance.value))}.`,
          },
          { label: 'Paper', text: paperWords(envelope.paper.value, facts.caliper, say) },
          ...sheet(bench),
          { label: 'Grain', text: grain(bench) },
          ...liningTerms(bench),
        ],
      },
    ],
  };
}

/** A blank is called square when its sides differ by less, in mm. */
const SQUARE = 0.005;

const grain = ({ envelope }: Bench): string => {
  const runs = envelope.paper.value?.grain;
  return `along an edge of the blank${runs ? `; in this paper it runs along the sheet’s ${runs} side` : ''}`;
};

function sheet({ facts, say }: Bench): readonly Term[] {
  if (!facts.sheet) return [];
  const { copies } = facts.sheet;
  const yields =
    copies === 0 ? 'too small for this blank' : `${copies} ${copies === 1 ? 'blank' : 'blanks'} from each`;
  return [{ label: 'Sheet', text: `${both(say.readSize(facts.sheet))}, ${yields}` }];
}
