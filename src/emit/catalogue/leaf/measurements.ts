import type { Facts } from '../../../folding/facts.js';
import { FLAP_NAMES, type FlapName } from '../../../folding/folding.js';
import { sameLength } from '../../../measure/slack.js';
import type { Reading } from '../../cut-sheet/content.js';
import { type Lengths, lengths } from '../../cut-sheet/lengths.js';
import { capitalised } from '../../cut-sheet/words.js';
import type { Job } from '../../emitter.js';
import { readBlank } from '../measurement-columns.js';
import { inAList } from '../in-a-list.js';

/** A figure of the table beside the drawing: in the recipe's units and in the other system, or one text for both. */
export interface Measurement {
  readonly label: string;
  readonly value: Reading | string;
}

/** What is laid off and made, then what there is to spare. */
export function measurements(job: Job): readonly Measurement[] {
  const { facts, envelope } = job;
  const say = lengths({ units: envelope.units, step: envelope.step.value });
  const { margins, sheet } = facts;
  return [
    { label: 'Card', value: say.readSize(facts.card) },
    { label: 'Blank', value: readBlank(say, facts.blank) },
    ...markRows(facts, say),
    { label: 'Face', value: say.exactSize(facts.face) },
    ...(facts.depth > 0 ? [{ label: 'Depth', value: say.exact(facts.depth) }] : []),
    ...(facts.tapeLength > 0 ? [{ label: 'Tape', value: say.read(facts.tapeLength) }] : []),
    ...(envelope.paper.value ? [{ label: 'Paper', value: inAList(envelope.paper.value.title) }] : []),
    ...(sheet ? [{ label: 'From a sheet', value: `${sheet.copies}` }] : []),
    { label: 'Crossing', value: say.exact(margins.crossing) },
    { label: 'Overlap', value: say.exact(margins.seamOverlap) },
    { label: 'Closure', value: say.exact(margins.closure) },
    { label: 'Room', value: say.exactSize({ width: margins.roomWidth, height: margins.roomHeight }) },
    ...(margins.roomDepth === null ? [] : [{ label: 'Room, depth', value: say.exact(margins.roomDepth) }]),
  ];
}

/** A mark for each corner, those of both sides together where they are alike; then the second ones of a box. */
function markRows({ scores }: Facts, say: Lengths): readonly Measurement[] {
  return [0, 1].flatMap((index) => {
    const mark = (flap: FlapName): number | null => scores[flap][index]?.alongEdge ?? null;
    const [left, right] = [mark('left'), mark('right')];
    const alike = left !== null && right !== null && sameLength(left, right);
    const flaps: readonly FlapName[] = alike ? ['left', 'seal', 'bottom'] : FLAP_NAMES;
    return flaps.flatMap((flap) => {
      const at = mark(flap);
      const corner = alike && flap === 'left' ? 'sides' : flap;
      return at === null
        ? []
        : [{ label: capitalised(index === 0 ? corner : `${corner}, 2nd`), value: say.read(at) }];
    });
  });
}
