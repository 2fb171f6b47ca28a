import { readArea as areaIn } from '../measure/area.js';
import { printShort } from '../measure/number.js';
import { exactLength, readDifference, readGraduation, readLength } from '../measure/ruler.js';
import type { CornerTreatment, Envelope, FlapShape, Size } from '../recipe/recipe.js';

/** A length off the envelope's ruler, as its author reads it: `11 1/4 in`. */
export const read = ({ units, step }: Envelope, mm: number): string =>
  readLength(mm, { units, step: step.value });

/** A margin or a difference: a graduation of an inch ruler as it is read (`1/16 in`), all else in decimals (`0.65 in`). */
export const exact = (envelope: Envelope, mm: number): string =>
  envelope.units === 'in' ? readDifference(mm, 'in') : exactLength(mm, envelope.units);

/** Two lengths, told apart: off the ruler if it can tell them apart, otherwise in decimals. */
export function readApart(envelope: Envelope, one: number, other: number): readonly [string, string] {
  const readings = [read(envelope, one), read(envelope, other)] as const;
  return readings[0] === readings[1] ? [exact(envelope, one), exact(envelope, other)] : readings;
}

/** `11 1/4 x 11 1/4 in` */
export const readSize = (envelope: Envelope, { width, height }: Size): string =>
  `${read(envelope, width).replace(/ [a-z]+$/, '')} x ${read(envelope, height)}`;

/** An area in the square of the envelope's units: `12.5 mm²`. */
export const readArea = ({ units }: Envelope, mm2: number): string => areaIn(mm2, units);

/** A length as a recipe writes it: off the ruler, or in mm where the ruler's step has no reading in the units. */
export const writeLength = ({ units }: Envelope, mm: number): string =>
  readGraduation(mm, units) ?? `${printShort(mm, 4)} mm`;

/** A size as a recipe writes it; the unit is written once where it is one. */
export function writeSize(envelope: Envelope, { width, height }: Size): string {
  const [first, second] = [writeLength(envelope, width), writeLength(envelope, height)];
  return `${unitOf(first) === unitOf(second) ? first.replace(/ [a-z]+$/, '') : first} x ${second}`;
}

const unitOf = (length: string): string => length.replace(/^.* /, '');

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
