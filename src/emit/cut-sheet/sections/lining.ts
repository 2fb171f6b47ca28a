import { TAPE_CLEARANCE } from '../../../folding/closure.js';
import { fits } from '../../../measure/slack.js';
import type { Bench } from '../bench.js';
import type { Term } from '../content.js';
import { both } from '../lengths.js';
import { paperWords } from '../paper-words.js';
import { listed } from '../words.js';

/** The lining to cut, where it folds, and what it is cut from; nothing where there is none. */
export function liningTerms(bench: Bench): readonly Term[] {
  const { facts, envelope, say } = bench;
  const { liner } = facts;
  if (!liner) return [];
  const inset = both(say.read(envelope.liner.value ?? 0));
  return [
    {
      label: 'Lining',
      text: `${both(say.readSize(liner))}, trimmed to lie ${inset} inside the scores of the face and the edges of the seal flap${clearOfTape(bench)}`,
    },
    { label: 'Lining’s fold', text: `${foldsAt(bench)} from its lower edge` },
    {
      label: 'Lining’s paper',
      text: `${paperWords(envelope.linerPaper.value, liner.caliper, say)}${yields(bench)}`,
    },
  ];
}

/** `5 5/8 in (142.9 mm)`, or both folds of a box's lining. */
export const foldsAt = ({ facts, say }: Bench): string =>
  listed((facts.liner?.folds ?? []).map((at) => both(say.read(at))));

/** Where it lies further in, for the sake of the strips that close the flap. */
function clearOfTape({ facts, folding, envelope, say }: Bench): string {
  const strips = folding.glue.map(({ name }) => name);
  if (strips.includes('seal-tip')) {
    const below = facts.flaps.seal.height - (facts.liner?.reach ?? 0);
    return `; clear of the flap’s tape, it ends ${both(say.read(below))} below its tip`;
  }
  const beside = envelope.tape.value + TAPE_CLEARANCE;
  return strips.includes('seal-left') && !fits(beside, envelope.liner.value ?? 0)
    ? `; clear of the flap’s tape, ${both(say.read(beside))} inside the edges of its tip`
    : '';
}

function yields({ facts, envelope, say }: Bench): string {
  const sheet = envelope.linerPaper.value?.sheet;
  const copies = facts.liner?.copies ?? null;
  if (!sheet || copies === null) return '';
  const count = copies === 0 ? 'none' : `${copies}`;
  return `; ${count} from a sheet ${both(say.readSize(sheet.value))}`;
}
