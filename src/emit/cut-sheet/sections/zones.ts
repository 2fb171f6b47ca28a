import { blankCorners } from '../../../folding/blank.js';
import { outerScoreAt } from '../../../folding/corner-directions.js';
import { CLEAR_OF_SCORES, type FlapZones } from '../../../folding/flap-zones.js';
import { type FrontZones, LETTER } from '../../../folding/front-zones.js';
import { zones as zonesOf } from '../../../folding/zones.js';
import { area, bounds, type Polygon } from '../../../plane/polygon.js';
import { regionArea } from '../../../plane/region.js';
import { lengthOf, sectionAt } from '../../../plane/section.js';
import type { Bench } from '../bench.js';
import type { Section, Term } from '../content.js';
import { both } from '../lengths.js';
import { listed, sentences } from '../words.js';

/** Where the seal flap may be decorated, and where address and stamp go on the front. */
export function zones(bench: Bench): Section {
  const { flap, front } = zonesOf(bench.envelope, bench.folding);
  return {
    name: 'zones',
    heading: 'Decoration, address and stamp',
    blocks: [{ kind: 'terms', terms: [...flapTerms(bench, flap), ...frontTerms(bench, front)] }],
  };
}

function flapTerms(bench: Bench, { print, raised }: FlapZones): readonly Term[] {
  const { say, envelope } = bench;
  if (!print)
    return [{ label: 'Seal flap', text: 'Too small to decorate clear of its folds, edges and glue.' }];
  const { min, max } = bounds(print);
  const text = sentences(
    `Print or stamp between ${fromHinge(bench, min.y, max.y)} from its fold, at most ${both(say.read(max.x - min.x))} wide.`,
    `Keep ${both(say.exact(CLEAR_OF_SCORES))} inside its edges, and clear of glue.`,
    envelope.fasten.value === 'tuck' && 'What is tucked in does not show.',
  );
  return [
    { label: 'Seal flap', text },
    { label: 'Raised work', text: raisedText(bench, print, raised) },
  ];
}

/** Seams are felt through the flap: embossing and wax keep off them. What is left is told along the middle line. */
function raisedText(bench: Bench, print: Polygon, raised: FlapZones['raised']): string {
  if (raised.length === 0) return 'None: seams lie beneath wherever the flap could bear it.';
  if (area(print) - regionArea(raised) < UNSEEN) return 'Wherever it may be printed: no seam lies beneath.';
  const middle = blankCorners(bench.folding.made.blank).seal.x;
  const free = raised
    .flatMap((part) => sectionAt(part, middle) ?? [])
    .sort((one, other) => one.from - other.from);
  const taken = free.reduce((left, stretch) => left - lengthOf(stretch), lengthOf(sectionAt(print, middle)));
  return sentences(
    `Keep ${both(bench.say.exact(CLEAR_OF_SCORES))} off the seams that lie beneath the closed flap as well.`,
    free.length === 0
      ? 'They take up its middle line.'
      : taken < UNSEEN
        ? 'Its middle line is free of them.'
        : `On its middle line that leaves it ${listed(free.map(({ from, to }) => `between ${fromHinge(bench, from, to)}`))} from the fold.`,
  );
}

/** Less than this is not worth a word: mm along a line, mm² of paper. */
const UNSEEN = 0.1;

/** `1/8 in (3 mm) and 4 11/16 in (119.2 mm)`, measured from the seal flap's own fold. */
function fromHinge({ folding, say }: Bench, from: number, to: number): string {
  const hinge = outerScoreAt(folding.made, 'seal');
  return `${both(say.read(from - hinge))} and ${both(say.read(to - hinge))}`;
}

function frontTerms({ say }: Bench, { address, stamp, hinge, height }: FrontZones): readonly Term[] {
  const held = hinge === 'top' ? 'the seal flap’s fold at the top' : 'the seal flap’s fold on the left';
  if (!address || !stamp) {
    const least = both(say.exactSize(LETTER.smallest));
    return [
      {
        label: 'Front',
        text: `Smaller than ${least}, the least that posts take from one country to another: ask yours before you send it.`,
      },
    ];
  }
  const fromBottom = height - address.fromTop - address.height;
  return [
    {
      label: 'Address',
      text:
        `Hold the front with ${held}. The address has a panel ${both(say.readSize(address))}, ` +
        `${both(say.exact(address.fromTop))} below the top edge, ${both(say.exact(address.fromRight))} from the right and ` +
        `${both(say.exact(fromBottom))} from the bottom edge.`,
    },
    {
      label: 'Stamp',
      text:
        `Leave ${both(say.exactSize(stamp))} free in the corner at the top right, for stamps and postmark. ` +
        'Your post’s own rules come first.',
    },
  ];
}
