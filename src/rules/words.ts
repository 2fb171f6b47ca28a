import { printShort } from '../measure/number.js';
import { exactLength, readLength } from '../measure/ruler.js';
import { sameLength } from '../measure/slack.js';
import { MM_PER } from '../measure/unit.js';
import type { CornerTreatment, Envelope, FlapShape, Size } from '../recipe/recipe.js';

/** A length off the envelope's ruler, as its author reads it: `11 1/4 in`. */
export const read = ({ units, step }: Envelope, mm: number): string =>
  readLength(mm, { units, step: step.value });

/** A margin or a difference, in decimals: `0.65 in`. */
export const exact = ({ units }: Envelope, mm: number): string => exactLength(mm, units);

/** Two lengths, told apart: off the ruler if it can tell them apart, otherwise in decimals. */
export function readApart(envelope: Envelope, one: number, other: number): readonly [string, string] {
  const readings = [read(envelope, one), read(envelope, other)] as const;
  return readings[0] === readings[1] ? [exact(envelope, one), exact(envelope, other)] : readings;
}

/** `11 1/4 x 11 1/4 in` */
export const readSize = (envelope: Envelope, { width, height }: Size): string =>
  `${read(envelope, width).replace(/ [a-z]+$/, '')} x ${read(envelope, height)}`;

/** An area in the square of the envelope's units: `12.5 mm²`. */
export const readArea = ({ units }: Envelope, mm2: number): string =>
  `${printShort(mm2 / MM_PER[units] ** 2, units === 'mm' ? 1 : 3)} ${units}²`;

/** A length as a recipe writes it: off the ruler, or in mm where the ruler's step has no reading in the units. */
export function writeLength(envelope: Envelope, mm: number): string {
  const graduation = envelope.units === 'in' ? MM_PER.in / 64 : 0.01;
  const liesOn = sameLength(mm, Math.round(mm / graduation) * graduation);
  return liesOn ? read(envelope, mm) : `${printShort(mm, 4)} mm`;
}

/** A size as a recipe writes it; a square blank by its side alone. */
export const writeSize = (envelope: Envelope, { width, height }: Size): string =>
  `${writeLength(envelope, width)} x ${writeLength(envelope, height)}`;

/** A flap's shape as a recipe writes it. */
export function writeShape(envelope: Envelope, shape: FlapShape): string {
  if (shape.kind === 'pointed') return 'pointed';
  if (shape.kind === 'rounded') return `rounded ${writeLength(envelope, shape.radius)}`;
  const rounded = shape.radius > 0 ? ` rounded ${writeLength(envelope, shape.radius)}` : '';
  return `blunt ${writeLength(envelope, shape.cut)}${rounded}`;
}

/** Both treatments of the corner pieces, or the one if they are alike. */
export const writeCorners = ({ bottom, seal }: { bottom: CornerTreatment; seal: CornerTreatment }): string =>
  bottom === seal ? bottom : `${bottom}, ${seal}`;
