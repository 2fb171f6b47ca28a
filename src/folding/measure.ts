import { pathArea } from '../plane/path.js';
import { distance } from '../plane/point.js';
import { regionArea } from '../plane/region.js';
import type { Envelope, Size } from '../recipe/recipe.js';
import { cutTips } from './closure.js';
import { isSide } from './corner-directions.js';
import { layers } from './cover.js';
import type { Facts } from './facts.js';
import { FLAP_NAMES, type AsMade, type FlapName, type FlapRecord, type Folding } from './folding.js';
import { seamLength, seamOverlap } from './glue.js';
import { crossing } from './scores.js';
import { closureLoss, crossingLoss, depthLoss, flapStopLoss, roomLoss } from './worst-case.js';

/** The numbers of a folded envelope, by their public names. */
export function measure(envelope: Envelope, folding: Folding): Facts {
  const { made } = folding;
  const deepest = layers(folding.pieces);
  const caliper = envelope.caliper.value;
  const bulk = envelope.bulk.value;
  const area = pathArea(folding.cutOutline);
  const tape = folding.glue.map(({ name, from, to, width }) => ({ name, length: distance(from, to), width }));
  const margins = {
    crossing: crossing(made),
    seamOverlap: seamOverlap(made),
    bareArea: regionArea(folding.bare),
    closure: folding.closure,
    ...room(envelope, made, deepest),
  };
  return {
    construction: 'diagonal',
    units: envelope.units,
    card: { ...envelope.card.value, bulk },
    face: made.face,
    depth: made.depth,
    shift: made.shift,
    blank: made.blank,
    scores: each((flap) => (made.second ? [made.first[flap], made.second[flap]] : [made.first[flap]])),
    flaps: each((flap) => ({
      shape: made.tips[flap].shape,
      height: made.heights[flap],
      trimmed: (made.second ?? made.first)[flap].fromCorner - made.heights[flap],
    })),
    margins,
    worst: worst(margins, envelope.tolerance.value, made),
    flapStop: stop(made, () => 0),
    thickness: Math.max(bulk + (1 + deepest) * caliper, made.depth + caliper),
    mass: mass(envelope, area),
    sheet: sheet(envelope, made.blank),
    layers: deepest,
    seamLength: seamLength(made),
    diagonal: Math.hypot(made.blank.width, made.blank.height),
    tapeLength: tape.reduce((sum, { length }) => sum + length, 0),
    tape,
    area,
    caliper: envelope.caliper,
  };
}

const each = <T>(value: (flap: FlapName) => T): FlapRecord<T> => ({
  left: value('left'),
  right: value('right'),
  seal: value('seal'),
  bottom: value('bottom'),
});

/** The room left for the card: half the sleeve's girth less half the card's, in each direction. */
function room({ card, bulk, caliper }: Envelope, { face, depth, second }: AsMade, deepest: number) {
  const spread = 2 * caliper.value + Math.max(0, bulk.value - depth);
  return {
    roomWidth: face.width - card.value.width - spread,
    roomHeight: face.height - card.value.height - spread,
    roomDepth: second ? depth - deepest * caliper.value - bulk.value : null,
  };
}

/** The same margins when every edge and mark is off by the tolerance, the wrong way. */
function worst(margins: Facts['margins'], tolerance: number, made: AsMade): Facts['worst'] {
  return {
    crossing: margins.crossing - crossingLoss(tolerance),
    seamOverlap: margins.seamOverlap - crossingLoss(tolerance),
    closure: margins.closure - closureLoss(tolerance, cutTips(made)),
    roomWidth: margins.roomWidth - roomLoss(tolerance),
    roomHeight: margins.roomHeight - roomLoss(tolerance),
    roomDepth: margins.roomDepth === null ? null : margins.roomDepth - depthLoss(tolerance),
    flapStop: stop(made, (flap) => flapStopLoss(tolerance, made.tips[flap].cut > 0)),
  };
}

/** The least distance between a flap's tip and the fold opposite. */
const stop = ({ face, heights }: AsMade, loss: (flap: FlapName) => number): number =>
  Math.min(
    ...FLAP_NAMES.map((flap) => (isSide(flap) ? face.width : face.height) - heights[flap] - loss(flap)),
  );

/** In g; null while the paper's grammage is not known. */
function mass({ paper, contents }: Envelope, area: number): number | null {
  const weight = paper.value?.weight?.value;
  return weight === undefined ? null : (weight * area) / 1e6 + (contents.value ?? 0);
}

/** How many blanks a sheet of the paper yields in plain rows, whichever way round is better. */
function sheet({ paper }: Envelope, blank: Size): Facts['sheet'] {
  const size = paper.value?.sheet?.value;
  if (!paper.value || !size) return null;
  const copies = ({ width, height }: Size): number =>
    Math.floor(size.width / width + 1e-9) * Math.floor(size.height / height + 1e-9);
  const turned = { width: blank.height, height: blank.width };
  return { paper: paper.value.name, ...size, copies: Math.max(copies(blank), copies(turned)) };
}
