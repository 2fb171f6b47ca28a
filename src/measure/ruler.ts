/*
 * measure/: lengths, masses and grammages: exact units, sums that mind the dimension, readings off a ruler.
 * In: numbers and units. Out: numbers in mm, mm², g, g/m², and text.
 * Refuses to know: recipes, paper, where a number was written.
 */
import { printShort } from './number.js';
import { NEARLY, sameLength } from './slack.js';
import { MM_PER, type Units } from './unit.js';

/** What lengths are read with: the units of the recipe's file and the step of its ruler, in mm. */
export interface Ruler {
  readonly units: Units;
  readonly step: number;
}

/**
 * A length as the ruler reads it: `11 1/4 in` (a fraction in lowest terms), `285.5 mm`, `28.55 cm`. A length that lies
 * on a fine graduation (1/64 in, 1/100 mm) is read as it is; any other at the nearest graduation of the step.
 */
export function readLength(mm: number, { units, step }: Ruler): string {
  const rounded = roundToStep(mm, step);
  return readGraduation(mm, units) ?? readGraduation(rounded, units) ?? decimals(rounded, units);
}

/** A length that lies on a fine graduation of the units, as the ruler reads it; null for any other. */
export function readGraduation(mm: number, units: Units): string | null {
  const graduation = FINEST[units];
  if (!sameLength(mm, Math.round(mm / graduation) * graduation)) return null;
  return units === 'in' ? fraction(mm) : decimals(mm, units);
}

/** The same length in the other system, beside the reading: `285.8 mm` for inches, `11.24 in` for mm and cm. */
export const otherLength = (mm: number, { units }: Ruler): string =>
  exactLength(mm, units === 'in' ? 'mm' : 'in');

/** A margin, a difference, a thickness, off the ruler: `0.65 in`, `-6.4 mm`, `0.15 mm`. Only nothing is shown as 0. */
export function exactLength(mm: number, units: Units): string {
  const value = mm / MM_PER[units];
  const { coarse, below } = DECIMALS[units];
  let places = Math.abs(value) < below ? coarse + 1 : coarse;
  while (Math.abs(mm) > NEARLY && Math.abs(value) < 0.5 * 10 ** -places) places++;
  return `${printShort(value, places)} ${units}`;
}

/** A difference of readings: on a fine graduation as the ruler reads it, else off the ruler: `1/8 in`, `-0.02 in`. */
export const readDifference = (mm: number, units: Units): string =>
  readGraduation(mm, units) ?? exactLength(mm, units);

/**
 * The graduation nearest to a length; midway, the even one (NIST Handbook 44, section 10.3). Lengths within a
 * billionth of midway are midway: arithmetic noise must not decide.
 */
export function roundToStep(mm: number, step: number): number {
  const steps = mm / step;
  const below = Math.floor(steps);
  const midway = Math.abs(steps - below - 0.5) <= noise(steps);
  const nearest = midway ? below + Math.abs(below % 2) : Math.round(steps);
  return nearest * step + 0;
}

/** The graduation at or above a length; one a billionth below it counts as at it. */
export function ceilToStep(mm: number, step: number): number {
  const steps = mm / step;
  const nearest = Math.round(steps);
  return (Math.abs(steps - nearest) <= noise(steps) ? nearest : Math.ceil(steps)) * step + 0;
}

/** The graduation at or below a length; one a billionth above it counts as at it. */
export const floorToStep = (mm: number, step: number): number => 0 - ceilToStep(-mm, step);

const noise = (steps: number): number => 1e-9 * Math.max(1, Math.abs(steps));

/** The finest graduation at which a stated length is still read as it stands, in mm. */
const FINEST: Readonly<Record<Units, number>> = { mm: 0.01, cm: 0.01, in: 25.4 / 64 };

/** Decimals of a length off the ruler; one more below the limit (in the same unit). */
const DECIMALS: Readonly<Record<Units, { readonly coarse: number; readonly below: number }>> = {
  mm: { coarse: 1, below: 1 },
  cm: { coarse: 2, below: 0.1 },
  in: { coarse: 2, below: 0.1 },
};

/** Decimals enough for a hundredth of a millimetre or a thousandth of an inch. */
const decimals = (mm: number, units: Units): string =>
  `${printShort(mm / MM_PER[units], units === 'mm' ? 2 : 3)} ${units}`;

/** Inches and a fraction in lowest terms: 64ths halved while they can be. */
function fraction(mm: number): string {
  const parts = Math.round((Math.abs(mm) / MM_PER.in) * 64);
  const sign = mm < 0 && parts > 0 ? '-' : '';
  const whole = Math.floor(parts / 64);
  let numerator = parts % 64;
  let denominator = 64;
  while (numerator > 0 && numerator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  const pieces =
    numerator === 0 ? [`${whole}`] : [...(whole > 0 ? [`${whole}`] : []), `${numerator}/${denominator}`];
  return `${sign}${pieces.join(' ')} in`;
}
