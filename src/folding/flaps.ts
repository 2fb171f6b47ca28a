import { ceilToStep } from '../measure/ruler.js';
import type { Envelope, FlapShape } from '../recipe/recipe.js';
import { isSide } from './corner-directions.js';
import type { AsMade, FlapName, FlapRecord, Tip } from './folding.js';
import { crossing } from './scores.js';
import { flapStopLoss } from './worst-case.js';

/** Rounding a right-angled tip to radius `r` shortens the flap by `r(√2 − 1)`. */
export const ROUNDING_LOSS = Math.SQRT2 - 1;

type Scores = Omit<AsMade, 'tips' | 'heights'>;

const POINTED: Tip = { shape: 'pointed', cut: 0, cutMark: 0, radius: 0, byDefault: false };

/** What is done to each flap's tip, and the height this leaves. */
export function tips(envelope: Envelope, made: Scores): Pick<AsMade, 'tips' | 'heights'> {
  const tipsByFlap: FlapRecord<Tip> = {
    left: tipOf('left', envelope, made),
    right: tipOf('right', envelope, made),
    seal: tipOf('seal', envelope, made),
    bottom: tipOf('bottom', envelope, made),
  };
  const height = (flap: FlapName): number => {
    const { cut, radius, shape } = tipsByFlap[flap];
    return pointedHeight(made, flap) - cut - (shape === 'rounded' ? radius * ROUNDING_LOSS : 0);
  };
  const heights = {
    left: height('left'),
    right: height('right'),
    seal: height('seal'),
    bottom: height('bottom'),
  };
  return { tips: tipsByFlap, heights };
}

/** A flap's height before anything is taken off its tip: its outermost score's distance from the corner. */
export const pointedHeight = ({ first, second }: Pick<AsMade, 'first' | 'second'>, flap: FlapName): number =>
  (second ?? first)[flap].fromCorner;

function tipOf(flap: FlapName, envelope: Envelope, made: Scores): Tip {
  const stated = statedShape(flap, envelope);
  if (stated) return statedTip(stated);
  const target = (isSide(flap) ? sideTarget : endTarget)(flap, envelope, made);
  const excess = pointedHeight(made, flap) - target;
  if (!(excess > 0)) return POINTED;
  const cutMark = ceilToStep(excess * Math.SQRT2, envelope.step.value);
  return { shape: 'blunt', cut: cutMark / Math.SQRT2, cutMark, radius: 0, byDefault: true };
}

const statedShape = (flap: FlapName, { flap: seal, bottom, sides }: Envelope): FlapShape | null =>
  ({ seal, bottom, left: sides, right: sides })[flap].value;

function statedTip(shape: FlapShape): Tip {
  if (shape.kind === 'rounded') return { ...POINTED, shape: 'rounded', radius: shape.radius };
  if (shape.kind === 'pointed') return POINTED;
  return {
    shape: 'blunt',
    cut: shape.cut,
    cutMark: shape.cut * Math.SQRT2,
    radius: shape.radius,
    byDefault: false,
  };
}

/** The least distance that a cut flap stops short of the fold opposite: 6 mm, or a tenth of the way if that is more. */
const clear = (across: number): number => Math.max(6, across / 10);

/**
 * How high a seal or bottom flap may stand: whole, unless its point would pass the face in the worst case. Then the
 * bottom flap stops clear of the opposite fold and the seal flap covers two thirds of the face.
 */
function endTarget(flap: FlapName, { tolerance }: Envelope, made: Scores): number {
  const { height } = made.face;
  const whole = pointedHeight(made, flap);
  if (whole + flapStopLoss(tolerance.value, false) <= height) return whole;
  return flap === 'seal' ? (height * 2) / 3 : height - clear(height);
}

/**
 * How high a side flap may stand: it may pass the middle by half the seam's width (and a step of the ruler); and it
 * always stops clear of the opposite fold.
 */
function sideTarget(flap: FlapName, { step }: Envelope, made: Scores): number {
  const { width } = made.face;
  const whole = pointedHeight(made, flap);
  const pastMiddle = width / 2 + crossing(made) / Math.SQRT2;
  const wanted = whole > pastMiddle + step.value ? pastMiddle : whole;
  return Math.min(wanted, width - clear(width));
}
