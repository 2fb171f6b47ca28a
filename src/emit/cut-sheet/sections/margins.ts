import { TAPE_CLEARANCE } from '../../../folding/closure.js';
import { figureWords } from '../../../folding/figure-words.js';
import { SHORTEST_SEAM } from '../../../folding/glue.js';
import type { Bench } from '../bench.js';
import type { Cell, Section } from '../content.js';
import { both } from '../lengths.js';
import { capitalised } from '../words.js';

/** How much there is to spare: as made, and when every cut and mark is off the wrong way. */
export function margins(bench: Bench): Section {
  const { facts, envelope, say } = bench;
  return {
    name: 'margins',
    heading: 'Margins',
    blocks: [
      {
        kind: 'paragraph',
        text: `At worst: every cut and mark off by ${both(say.read(envelope.tolerance.value))} the wrong way.`,
      },
      { kind: 'table', headings: ['', 'As made', 'At worst', 'Needed'], rows: rows(bench) },
      ...(facts.caliper.basis === 'stated'
        ? []
        : [
            {
              kind: 'paragraph' as const,
              text: `The room for the card reckons with paper ${both(say.exact(facts.caliper.value))} thick, ${facts.caliper.basis}.`,
            },
          ]),
    ],
  };
}

function rows({ facts, envelope, say }: Bench): readonly (readonly Cell[])[] {
  const { margins: made, worst } = facts;
  const taped = say.exact(envelope.tape.value + TAPE_CLEARANCE).read;
  const row = (name: string, asMade: number | null, atWorst: number | null, needed = '0 or more') =>
    asMade === null
      ? []
      : [[words(name), say.exact(asMade), atWorst === null ? '' : say.exact(atWorst), needed]];
  return [
    ...row('room-width', made.roomWidth, worst.roomWidth),
    ...row('room-height', made.roomHeight, worst.roomHeight),
    ...row('room-depth', made.roomDepth, worst.roomDepth),
    ...row('crossing', made.crossing, worst.crossing),
    ...row('seam-overlap', made.seamOverlap, worst.seamOverlap, taped),
    ...row('seam-length', facts.seamLength, null, say.exact(SHORTEST_SEAM).read),
    ...row('closure', made.closure, worst.closure, taped),
    ...row('flap-stop', facts.flapStop, worst.flapStop),
    [words('bare'), made.bareArea > 0 ? say.area(made.bareArea) : 'none', '', 'none'],
  ];
}

const words = (name: string): string => capitalised(figureWords(name));
