import { TAPE_CLEARANCE } from '../../../folding/closure.js';
import type { Bench } from '../bench.js';
import type { Cell, Section } from '../content.js';
import { both } from '../lengths.js';

/** How much there is to spare: as made, and when every cut and mark is off the wrong way. */
export function margins(bench: Bench): Section {
  const { facts, envelope, say } = bench;
  return {
    heading: 'Margins',
    blocks: [
      {
        kind: 'paragraph',
        text: `“At worst” is when every cut and every mark is off by ${both(say.read(envelope.tolerance.value))} the wrong way.`,
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
  const nothing = '0 or more';
  const taped = say.exact(envelope.tape.value + TAPE_CLEARANCE).read;
  const row = (name: string, asMade: number, atWorst: number, needed: string): readonly Cell[] => [
    name,
    say.exact(asMade),
    say.exact(atWorst),
    needed,
  ];
  return [
    row('Room, card’s width', made.roomWidth, worst.roomWidth, nothing),
    row('Room, card’s height', made.roomHeight, worst.roomHeight, nothing),
    ...(made.roomDepth === null || worst.roomDepth === null
      ? []
      : [row('Room, card’s depth', made.roomDepth, worst.roomDepth, nothing)]),
    row('Marks pass by', made.crossing, worst.crossing, nothing),
    row('Seam overlap', made.seamOverlap, worst.seamOverlap, taped),
    row('Closure of the flap', made.closure, worst.closure, taped),
    row('Tip to opposite fold', facts.flapStop, worst.flapStop, nothing),
  ];
}
