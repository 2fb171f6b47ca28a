import { blankCorners } from '../../folding/blank.js';
import { treatmentAt } from '../../folding/corners.js';
import { isSide } from '../../folding/corner-directions.js';
import { FLAP_NAMES, type FlapName, type Folding } from '../../folding/folding.js';
import { markedScores } from '../../folding/marked-scores.js';
import type { Envelope } from '../../recipe/recipe.js';
import { drawBlank } from '../draw-blank.js';
import { type Drawing, type Layer, lettering, line, outline, path } from '../drawing.js';
import { RISING } from '../hatch.js';
import { scoreLayer } from '../score-layer.js';
import { CAP_HEIGHT } from '../text-measure.js';
import type { Pen } from './stage.js';

/** On the page, in mm. */
const TICK = 1.4;
const HATCH = 0.9;
const NAME = 2.3;
/** Between a corner's name and its edges. */
const CLEAR = 1.4;

/** The blank as cut from the sheet, its corners named, its marks on its edges. */
export const markedBlank = (folding: Folding, envelope: Envelope, pen: Pen): Drawing => [
  ...wholeBlank(folding, envelope, pen),
  ...FLAP_NAMES.flatMap((flap) => cornerName(folding, flap, pen)),
];

/** The same, scored from mark to mark: what is folded again with an end flap is scored as far as the side scores. */
export const scoredBlank = (folding: Folding, envelope: Envelope, pen: Pen): Drawing => [
  ...wholeBlank(folding, envelope, pen),
  ...FLAP_NAMES.flatMap((flap) => scoresOf(folding, flap)),
];

/** Notches and tips cut off; what falls away is hatched. */
export const cutBlank = (folding: Folding, envelope: Envelope, pen: Pen): Drawing => [
  path('inside', folding.cutOutline),
  ...trueBlank(folding, envelope, pen, ['waste', 'blank', 'cut']),
  ...folding.creases.map((crease) => line(scoreLayer(crease), crease.from, crease.to)),
];

const wholeBlank = (folding: Folding, envelope: Envelope, pen: Pen): Drawing => [
  outline('inside', folding.blankOutline),
  outline('cut', folding.blankOutline),
  ...trueBlank(folding, envelope, pen, ['mark']),
];

/** Some layers of the true-size drawing. */
const trueBlank = (folding: Folding, envelope: Envelope, { scale }: Pen, layers: readonly Layer[]): Drawing =>
  drawBlank(folding, envelope, {
    hatchSpacing: HATCH / scale,
    hatchDegrees: RISING,
    markLength: TICK / scale,
  }).filter(({ layer }) => layers.includes(layer));

function scoresOf({ made, creases }: Folding, flap: FlapName): Drawing {
  const stops = !isSide(flap) && treatmentAt(made, flap) === 'folded';
  if (stops)
    return creases
      .filter((crease) => crease.flap === flap)
      .map((crease) => line(scoreLayer(crease), crease.from, crease.to));
  return markedScores(made, flap).map(({ order, from, to }) =>
    line(scoreLayer({ order, sense: 'valley' }), from, to),
  );
}

/** A corner's name within it, where the blank is as wide as the name; none on one too small for all four. */
function cornerName({ made }: Folding, flap: FlapName, { scale, measure }: Pen): Drawing {
  const corner = blankCorners(made.blank)[flap];
  const capitals = (NAME * CAP_HEIGHT) / scale;
  const width = (name: FlapName): number => measure(name, NAME, 'regular') / scale;
  const wide = width(flap);
  if (made.diagonal < 3 * Math.max(...FLAP_NAMES.map(width))) return [];
  const clear = CLEAR / scale;
  const half = capitals / 2;
  const places: Readonly<Record<FlapName, readonly [x: number, y: number]>> = {
    left: [half + clear + wide / 2, -half],
    right: [-half - clear - wide / 2, -half],
    seal: [0, -wide / 2 - clear - capitals],
    bottom: [0, wide / 2 + clear],
  };
  const [x, y] = places[flap];
  return [lettering(flap, { x: corner.x + x, y: corner.y + y }, NAME, { anchor: 'middle' })];
}
