import { roundToStep } from '../measure/ruler.js';
import type { Envelope } from '../recipe/recipe.js';
import { wishedBlank } from './blank.js';
import { tips } from './flaps.js';
import { type AsMade, eachFlap, type FlapRecord, type ScoreLine } from './folding.js';
import { markFor, scoreFromMark, secondScores } from './scores.js';

/**
 * Rounds blank and marks to the ruler's step and computes everything else back from them. What the recipe fixes is
 * taken as written. Lengths in mm.
 */
export function asMade(envelope: Envelope): AsMade {
  const step = envelope.step.value;
  const side = roundToStep(wishedBlank(envelope), step);
  const blank = envelope.blank.value ?? { width: side, height: side };
  const diagonal = (blank.width + blank.height) / Math.SQRT2;
  const first = firstScores(envelope, diagonal, step);
  const depth = envelope.depth.value;
  const second = depth > 0 ? secondScores(first, depth, step) : null;
  const scores = {
    blank,
    diagonal,
    first,
    second,
    face: {
      width: diagonal - first.left.fromCorner - first.right.fromCorner,
      height: diagonal - first.seal.fromCorner - first.bottom.fromCorner,
    },
    faceCentre: {
      x: (first.left.fromCorner - first.right.fromCorner) / 2,
      y: (first.bottom.fromCorner - first.seal.fromCorner) / 2,
    },
    depth: second ? first.left.fromCorner - second.left.fromCorner : 0,
    shift: (first.seal.fromCorner - first.bottom.fromCorner) / 2,
    corners: envelope.corners.value,
  };
  return { ...scores, ...tips(envelope, scores) };
}

/** Marks as the recipe fixes them, or the wish rounded: sides `(D − W)/2`, seal and bottom `(D − H)/2 ± s`. */
function firstScores(envelope: Envelope, diagonal: number, step: number): FlapRecord<ScoreLine> {
  const { width, height } = envelope.face.value;
  const shift = envelope.shift.value;
  const sideMark = markFor((diagonal - width) / 2, step);
  const [left, right] = envelope.sideMarks.value ?? [sideMark, sideMark];
  const marks: FlapRecord<number> = {
    left,
    right,
    seal: envelope.sealMark.value ?? markFor((diagonal - height) / 2 + shift, step),
    bottom: envelope.bottomMark.value ?? markFor((diagonal - height) / 2 - shift, step),
  };
  return eachFlap((flap) => scoreFromMark(marks[flap]));
}
