import { pathArea } from '../plane/path.js';
import { distance } from '../plane/point.js';
import { regionArea } from '../plane/region.js';
import type { Envelope, Size } from '../recipe/recipe.js';
import { cutTips } from './closure.js';
import { isSide } from './corner-directions.js';
import { copiesOf } from './copies.js';
import type { Facts } from './facts.js';
import { FLAP_NAMES, type AsMade, eachFlap, type FlapName, type Folding } from './folding.js';
import { seamLength, seamOverlap } from './glue.js';
import { linerFacts } from './liner-facts.js';
import { crossing } from './scores.js';
import { closureLoss, crossingLoss, depthLoss, flapStopLoss, roomLoss } from './worst-case.js';

/** The numbers of a folded envelope, by their public names. */
export function measure(envelope: Envelope, folding: Folding): Facts {
  const { made } = folding;
  const caliper = envelope.caliper.value;
  const area = pathArea(folding.cutOutline);
  const liner = linerFacts(envelope, folding);
  const tape = folding.glue.map(({ name, from, to, width }) => ({ name, length: distance(from, to), width }));
  const margins = {
    crossing: crossing(made),
    seamOverlap: seamOverlap(made),
    bareArea: regionArea(folding.bare),
    closure: folding.closure,
    ...room(envelope, made, folding.layers, liner),
  };
  return {
    construction: 'diagonal',
    units: envelope.units,
    card: { ...envelope.card.value, bulk: envelope.bulk.value },
    face: made.face,
    depth: made.depth,
    shift: made.shift,
    blank: made.blank,
    scores: eachFlap((flap) => (made.second ? [made.first[flap], made.second[flap]] : [made.first[flap]])),
    flaps: eachFlap((flap) => ({
      shape: made.tips[flap].shape,
      height: made.heights[flap],
      trimmed: (made.second ?? made.first)[flap].fromCorner - made.heights[flap],
    })),
    margins,
    worst: worst(margins, envelope.tolerance.value, made),
    flapStop: stop(made, () => 0),
    thickness: Math.max(filling(envelope, liner) + (1 + folding.layers) * caliper, made.depth + caliper),
    mass: mass(envelope, area, liner),
    sheet: sheet(envelope, made.blank),
    liner,
    layers: folding.layers,
    seamLength: seamLength(made),
    diagonal: Math.hypot(made.blank.width, made.blank.height),
    tapeLength: tape.reduce((sum, { length }) => sum + length, 0),
    tape,
    area,
    caliper: envelope.caliper,
  };
}

/** What lies between front and back: the filled card, and a lining, which counts as if it reached the card's edges (safe). */
const filling = ({ bulk }: Envelope, liner: Facts['liner']): number => bulk.value + (liner?.thickness ?? 0);

/** The room left for the card: half the sleeve's girth less half the card's, in each direction. */
function room(envelope: Envelope, { face, depth, second }: AsMade, deepest: number, liner: Facts['liner']) {
  const { card, caliper } = envelope;
  const filled = filling(envelope, liner);
  const spread = 2 * caliper.value + Math.max(0, filled - depth);
  return {
    roomWidth: face.width - card.value.width - spread,
    roomHeight: face.height - card.value.height - spread,
    roomDepth: second ? depth - deepest * caliper.value - filled : null,
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

/** In g; null while the grammage of its paper, or of its lining's, is not known. */
function mass({ paper, contents }: Envelope, area: number, liner: Facts['liner']): number | null {
  const weight = paper.value?.weight?.value;
  const lining = liner ? liner.mass : 0;
  return weight === undefined || lining === null
    ? null
    : (weight * area) / 1e6 + lining + (contents.value ?? 0);
}

/** How many blanks a sheet of the paper yields. */
function sheet({ paper }: Envelope, blank: Size): Facts['sheet'] {
  const size = paper.value?.sheet?.value;
  if (!paper.value || !size) return null;
  return { paper: paper.value.name, ...size, copies: copiesOf(blank, size) };
}
