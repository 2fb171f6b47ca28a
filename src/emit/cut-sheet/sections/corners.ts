import { notchRadius, standBack } from '../../../folding/corners.js';
import { isSide } from '../../../folding/corner-directions.js';
import { pointedHeight } from '../../../folding/flaps.js';
import { FLAP_NAMES, type FlapName } from '../../../folding/folding.js';
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

function notched({ envelope, say, folding }: Bench, ends: readonly FlapName[]): string {
  const caliper = envelope.caliper.value;
  const back = both(say.exact(standBack(caliper)));
  const box = folding.made.second !== null;
  const scores = `${box ? 'first ' : ''}${ends.length > 1 ? 'scores' : 'score'}`;
  return sentences(
    `Cut out the corner piece at both ends of the ${listed(ends)} ${scores}.`,
    `On the side ${box ? 'flaps and their walls' : 'flaps'} cut ${back} inside the ${listed(ends)} ${scores}, nearer the middle of the blank.`,
    `On the ${either(ends)} flap start where the ${box ? 'first ' : ''}scores cross, follow the side score for ` +
      `${box ? `the wall and ${back} more` : back}, then lean in one part in eight.`,
    `Round the notch where the two cuts meet, to a radius of ${both(say.exact(notchRadius(caliper)))}, lest it tear.`,
  );
}

const folded = (ends: readonly FlapName[]): string =>
  `Leave the corner piece on at both ends of the ${listed(ends)} ${ends.length > 1 ? 'scores' : 'score'}: it goes in ` +
  `with the side flap and is folded again with the ${either(ends)} flap.`;

const either = (ends: readonly FlapName[]): string => ends.join(' or ');

/** What is done to each tip, both sides in one line when they are alike; those left pointed in the last. */
function tipTerms(bench: Bench): readonly Term[] {
  const { tips } = bench.folding.made;
  const shaped = FLAP_NAMES.filter((flap) => tips[flap].shape !== 'pointed');
  const all = shaped.map((flap) => ({ label: `${capitalised(flap)} tip`, text: tipText(bench, flap) }));
  const [left, right] = all;
  const sides = shaped.includes('left') && shaped.includes('right') && left && left.text === right?.text;
  return [
    ...(sides ? [{ label: 'Side tips', text: left.text }, ...all.slice(2)] : all),
    ...(shaped.length === FLAP_NAMES.length
      ? []
      : [{ label: shaped.length === 0 ? 'All tips' : 'Other tips', text: 'Leave pointed.' }]),
  ];
}

function tipText(bench: Bench, flap: FlapName): string {
  const { say, folding } = bench;
  const { shape, cutMark, radius, byDefault } = folding.made.tips[flap];
  if (shape === 'rounded') return `Round to a radius of ${both(say.read(radius))}.`;
  return sentences(
    `Mark ${both(say.read(cutMark))} from the corner along both edges; join the marks and cut the tip off there.`,
    radius > 0 && `Round the two corners this leaves to ${both(say.read(radius))}.`,
    byDefault && reason(bench, flap),
  );
}

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
