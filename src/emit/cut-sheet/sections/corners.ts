import { notchRadius, standBack } from '../../../folding/corners.js';
import { isSide } from '../../../folding/corner-directions.js';
import { pointedHeight } from '../../../folding/flaps.js';
import { FLAP_NAMES, type FlapName, type Tip } from '../../../folding/folding.js';
import { flapStopLoss } from '../../../folding/worst-case.js';
import { type Bench, endsThatAre } from '../bench.js';
import type { Section, Term } from '../content.js';
import { both } from '../lengths.js';
import { capitalised, listed, sentences } from '../words.js';

/** What becomes of the corner pieces where scores cross, and of the flaps' tips. */
export const corners = (bench: Bench): Section => ({
  name: 'corners',
  heading: 'Corners and tips',
  blocks: [{ kind: 'terms', terms: [...cornerTerms(bench), ...tipTerms(bench)] }],
});

const cornerTerms = (bench: Bench): readonly Term[] => [
  ...pairs('Notched', endsThatAre(bench, 'notched'), (ends) => notched(bench, ends)),
  ...pairs('Folded', endsThatAre(bench, 'folded'), folded),
];

const pairs = (
  label: string,
  ends: readonly FlapName[],
  text: (ends: readonly FlapName[]) => string,
): readonly Term[] => (ends.length === 0 ? [] : [{ label, text: text(ends) }]);

const beside = (ends: readonly FlapName[]): string =>
  `at both ends of the ${ends.length === 1 ? `${ends[0]} score` : `${listed(ends)} scores`}`;

function notched({ envelope, say, folding }: Bench, ends: readonly FlapName[]): string {
  const caliper = envelope.caliper.value;
  const back = both(say.exact(standBack(caliper)));
  const [box, flap] = [folding.made.second !== null, listed(ends)];
  return sentences(
    `Cut out the corner piece ${beside(ends)}.`,
    `On the side flap${box ? ' and its wall' : ''} cut ${back} inside that score, nearer the middle of the blank.`,
    `On the ${flap} flap start where the ${box ? 'first ' : ''}scores cross, follow the side score for ` +
      `${box ? `the wall and ${back} more` : back}, then lean in 1 in 8.`,
    `End the notch in a round hole ${both(say.exact(2 * notchRadius(caliper)))} across, lest it tear.`,
  );
}

const folded = (ends: readonly FlapName[]): string =>
  `Leave the corner piece on ${beside(ends)}: it goes in with the side flap and is folded again with the ` +
  `${listed(ends)} flap.`;

/** One line for all tips when they are alike, or for both sides; else a line each. */
function tipTerms(bench: Bench): readonly Term[] {
  const all = FLAP_NAMES.map((flap) => ({ label: `${capitalised(flap)} tip`, text: tipText(bench, flap) }));
  const [left, right, ...ends] = all as [Term, Term, ...Term[]];
  if (all.every(({ text }) => text === left.text)) return [{ label: 'All tips', text: left.text }];
  return left.text === right.text ? [{ label: 'Side tips', text: left.text }, ...ends] : all;
}

const tipText = (bench: Bench, flap: FlapName): string => {
  const tip = bench.folding.made.tips[flap];
  return TIP_TEXTS[tip.shape](tip, bench, flap);
};

const TIP_TEXTS: Readonly<Record<Tip['shape'], (tip: Tip, bench: Bench, flap: FlapName) => string>> = {
  pointed: () => 'Leave pointed.',
  rounded: ({ radius }, { say }) => `Round to a radius of ${both(say.read(radius))}.`,
  blunt: ({ cutMark, radius, byDefault }, bench, flap) =>
    sentences(
      `Mark ${both(bench.say.read(cutMark))} from the corner along both edges; join the marks and cut the tip off there.`,
      radius > 0 && `Round the two corners this leaves to ${both(bench.say.read(radius))}.`,
      byDefault && reason(bench, flap),
    ),
};

/** Why a tip is cut that nobody asked to cut. */
function reason({ folding: { made }, envelope, say }: Bench, flap: FlapName): string {
  const whole = pointedHeight(made, flap);
  const across = isSide(flap) ? made.face.width : made.face.height;
  const reaches = `It is cut because its point would reach ${both(say.read(whole))}`;
  if (whole > across) return `${reaches}, past the fold opposite.`;
  if (whole + flapStopLoss(envelope.tolerance.value, false) > across)
    return `${reaches}, and in an unsteady hand past the fold opposite.`;
  return `${reaches}, further past the middle than the seams need.`;
}
