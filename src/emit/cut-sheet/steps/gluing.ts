import { tucksBehind } from '../../../drawing/stages/tucks-behind.js';
import { TAPE_CLEARANCE } from '../../../folding/closure.js';
import type { GlueLine } from '../../../folding/folding.js';
import type { Envelope } from '../../../recipe/recipe.js';
import type { Bench } from '../bench.js';
import type { Step } from '../content.js';
import { both } from '../lengths.js';
import { stripToCut } from '../strip-to-cut.js';
import { sentences } from '../words.js';

/** Only where the bottom flap alone closes too little. */
export function centreSeam(bench: Bench): Step | null {
  if (!bench.folding.centreSeam) return null;
  return {
    title: 'Glue the centre seam',
    text:
      `Lay a strip of tape or glue${long(bench, 'centre')} along the middle of the right flap, where it will lie over the ` +
      'left one. Fold in the left flap, slip a waste sheet into the pocket, fold in the right flap and press.',
  };
}

export function lowerSeams(bench: Bench): Step {
  const { say, envelope, folding } = bench;
  return {
    title: 'Glue the lower seams',
    text: sentences(
      !folding.centreSeam && 'Fold in the left flap, then the right, with a waste sheet in the pocket.',
      `On the inside of the bottom flap lay a strip of tape or glue${long(bench, 'lower-left', 'lower-right')} along each slanted edge,`,
      `${both(say.exact(TAPE_CLEARANCE / 2))} in. Start one tape width, ${both(say.read(envelope.tape.value))}, from the side`,
      'fold; end where the side flap beneath ends, never beyond, or the pocket is glued shut. Fold up the bottom flap and',
      'press. Let wet glue dry flat under a weight before the card goes in.',
    ),
  };
}

export const closing = (bench: Bench): Step => CLOSINGS[bench.envelope.fasten.value](bench);

const CLOSINGS: Readonly<Record<Envelope['fasten']['value'], (bench: Bench) => Step>> = {
  glue: (bench) => ({
    title: 'Lay the seal strip',
    text: sealStrip(bench),
  }),
  tuck: ({ folding }) => ({
    title: 'Tuck the flap',
    text: `Put no glue on the seal flap: once the card is in, tuck its tip behind the ${tucksBehind(folding)}.`,
  }),
  seal: () => ({
    title: 'Close with a seal',
    text:
      'Put no glue on the seal flap: once the card is in, set a sticker or a wax seal over its tip, half on the flap and ' +
      'half on the paper beneath.',
  }),
};

/** Where the strip that closes the seal flap lies: along both edges of its point, or across a cut or rounded tip. */
function sealStrip(bench: Bench): string {
  const lines = bench.folding.glue.map(({ name }) => name);
  if (lines.includes('seal-tip'))
    return `Lay the strip${long(bench, 'seal-tip')} on the inside of the seal flap, across its tip. Leave its backing on.`;
  if (lines.includes('seal-left'))
    return `Lay a strip${long(bench, 'seal-left', 'seal-right')} on the inside of the seal flap, along each edge of its tip. Leave the backing on.`;
  return 'The seal flap lies on too little glued paper to take a full strip: close its tip with what holds.';
}

/** ` 4 7/8 in (123.8 mm) long`, a pair's lengths apart when they differ, or nothing where there is no such strip. */
function long(bench: Bench, ...names: readonly GlueLine['name'][]): string {
  const lengths = bench.facts.tape
    .filter(({ name }) => names.includes(name))
    .map(({ length }) => both(bench.say.read(stripToCut(bench, length))));
  const [first, ...others] = lengths;
  if (first === undefined) return '';
  return others.every((length) => length === first)
    ? ` ${first} long`
    : `, ${lengths.join(' on the left and ')} on the right,`;
}

export const finish = ({ envelope }: Bench): Step => ({
  title: 'Finish',
  text: `Rub out the pencil. Write the recipe’s name, ${envelope.name}, small under the flap.`,
});
