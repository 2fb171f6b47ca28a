import { isSide } from '../../../folding/corner-directions.js';
import { FLAP_NAMES, type FlapName } from '../../../folding/folding.js';
import type { Bench } from '../bench.js';
import type { Cell, Reading, Section } from '../content.js';
import { both } from '../lengths.js';

/** What to measure when it is folded without glue. */
export function dryFold(bench: Bench): Section {
  const { facts, say } = bench;
  return {
    name: 'dry-fold',
    heading: 'At the dry fold',
    blocks: [
      {
        kind: 'terms',
        terms: [
          {
            label: 'Face',
            text: `${both(say.readSize(facts.face))}${facts.depth > 0 ? `, walls ${both(say.exact(facts.depth))}` : ''}`,
          },
        ],
      },
      {
        kind: 'table',
        headings: ['Tip of flap', 'Reaches, from its own fold', 'Stops short of the fold opposite'],
        rows: FLAP_NAMES.map((flap) => landing(bench, flap)),
      },
    ],
  };
}

function landing({ facts, say }: Bench, flap: FlapName): readonly Cell[] {
  const { height } = facts.flaps[flap];
  const short = (isSide(flap) ? facts.face.width : facts.face.height) - height;
  return [flap, say.read(height), short < 0 ? passing(say.read(-short)) : say.read(short)];
}

const passing = ({ read, other }: Reading): Reading => ({ read: `passes it by ${read}`, other });
