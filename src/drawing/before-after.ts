import { FLAP_NAMES, type FlapRecord } from '../folding/folding.js';
import { readLength } from '../measure/ruler.js';
import { sameLength } from '../measure/slack.js';
import { AROUND, edgeLengths, type EdgeLengths } from './blank-dimensions.js';
import { paragraph, stack, standing } from './block.js';
import { beforeAfterWords } from './before-after-words.js';
import { cornerName, cornerNameReach } from './corner-name.js';
import { cornersOnPage } from './corners-on-page.js';
import { drawBlank } from './draw-blank.js';
import { type Drawing, path } from './drawing.js';
import { RISING } from './hatch.js';
import {
  edgeDimensions,
  EXTENSION_GAP,
  FIGURE,
  inBothSystems,
  type Length,
  LEVEL,
} from './edge-dimensions.js';
import type { Figure } from './figure.js';
import { place, placer, SQUARE_TO_PAGE } from './place.js';
import type { TextMeasure } from './text-measure.js';
import { type Drawn, rulerOf } from './words.js';

/**
 * On the page, in mm: the longest side of both blanks; the newer one's is never less than will do for its figures, unless the
 * older one would then be wider than a sheet. What is smaller than a crumb is drawn as if it were one.
 */
const SIDE = 64;
const LEAST = 52;
const WIDEST = 1500;
const CRUMB = 1;
/** Ticks and hatching, what stands under the picture. */
const TICK = 1.4;
const HATCH = 0.9;
const TITLE = 4.2;
const BODY = 2.9;
const GAP = 4;
const AFTER_TITLE = 1.6;

/**
 * A small picture of what became of a blank: as it is, over what it was, narrow and dashed, about one centre and to one
 * scale; edges square to the page, seen from the inside. Its sides are dimensioned, and the marks that came out otherwise,
 * with what they were beneath. From (0, 0) to its size, in mm, y up.
 */
export function beforeAfter(before: Drawn, after: Drawn, measure: TextMeasure): Figure {
  const [was, is] = [before.folding.made.blank, after.folding.made.blank];
  const scale = scaleFor(Math.max(is.width, is.height), Math.max(was.width, was.height));
  const both = {
    width: Math.max(was.width, is.width) * scale,
    height: Math.max(was.height, is.height) * scale,
  };
  const lengths = lengthsOf(before, after);
  const levels = Math.max(...FLAP_NAMES.map((flap) => lengths[flap].length));
  const names = Math.max(...FLAP_NAMES.map((flap) => cornerNameReach(flap, measure)));
  const reach = Math.max(levels * LEVEL + EXTENSION_GAP + FIGURE, names);
  const size = { width: both.width + 2 * reach, height: both.height + 2 * reach };
  const onPage = { angleDegrees: SQUARE_TO_PAGE, scale, x: size.width / 2, y: size.height / 2 };
  const corners = cornersOnPage(is, placer(onPage));
  const outer = cornersOnPage({ width: both.width / scale, height: both.height / scale }, placer(onPage));
  const lifts = {
    level: (both.height - is.height * scale) / 2,
    upright: (both.width - is.width * scale) / 2,
  };
  const picture: Drawing = [
    ...place(overEachOther(before, after, scale), onPage),
    ...AROUND.flatMap(({ flap, next }) => {
      const level = sameLength(corners[flap].y, corners[next].y);
      const measures = { ruler: rulerOf(after), measure, scale, lift: level ? lifts.level : lifts.upright };
      return edgeDimensions(corners[flap], corners[next], lengths[flap], measures);
    }),
    ...FLAP_NAMES.map((flap) => cornerName(flap, outer[flap])),
  ];
  const whole = stack(
    GAP,
    standing(picture, size.height),
    stack(
      AFTER_TITLE,
      paragraph(after.envelope.name, size.width, TITLE, measure, 'bold'),
      paragraph(beforeAfterWords(before, after), size.width, BODY, measure),
    ),
  );
  return {
    drawing: place(whole.drawing, { y: whole.height }),
    width: size.width,
    height: whole.height,
  };
}

function scaleFor(newer: number, older: number): number {
  const larger = Math.max(newer, older, CRUMB);
  return Math.min(Math.max(SIDE / larger, LEAST / Math.max(newer, CRUMB)), WIDEST / larger);
}

/** The blank's sides, and the marks that are not what they were, each over what it was. */
function lengthsOf(before: Drawn, after: Drawn): FlapRecord<readonly Length[]> {
  const ruler = rulerOf(after);
  const of = (flap: (typeof FLAP_NAMES)[number]): readonly Length[] => {
    const [was, is] = [edgeLengths(before.folding, flap), edgeLengths(after.folding, flap)];
    return KINDS.flatMap((kind): readonly Length[] => {
      const [old, length] = [was[kind], is[kind]];
      if (length === 0) return [];
      if (sameLength(old, length)) return kind === 'side' ? inBothSystems([length], ruler) : [];
      return [{ length, beneath: old === 0 ? 'new' : `was ${readLength(old, ruler)}` }];
    });
  };
  return { left: of('left'), right: of('right'), seal: of('seal'), bottom: of('bottom') };
}

const KINDS: readonly (keyof EdgeLengths)[] = ['cut', 'second', 'first', 'side'];

/** Both in the frame of the blank: paper and lines as they are, and under the lines those that were elsewhere. */
function overEachOther(before: Drawn, after: Drawn, scale: number): Drawing {
  const is = linesOf(after, scale);
  const known = new Set(is.map(({ shape }) => JSON.stringify(shape)));
  const was = linesOf(before, scale)
    .filter(({ layer, shape }) => layer !== 'waste' && !known.has(JSON.stringify(shape)))
    .map((mark) => ({ ...mark, layer: 'hidden' as const }));
  return [path('inside', after.folding.cutOutline), ...was, ...is];
}

const linesOf = ({ folding, envelope }: Drawn, scale: number): Drawing => [
  ...drawBlank(folding, envelope, {
    hatchSpacing: HATCH / scale,
    hatchDegrees: RISING,
    markLength: TICK / scale,
  }).filter(({ layer }) => layer !== 'glue'),
  ...(folding.liner ? [path('lining', folding.liner.outline)] : []),
];
