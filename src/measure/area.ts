import { printShort } from './number.js';
import { MM_PER, type Units } from './unit.js';

/** An area in mm², off the ruler: `0.12 in²`, `3.5 mm²`. */
export const readArea = (mm2: number, units: Units): string =>
  `${printShort(mm2 / MM_PER[units] ** 2, units === 'mm' ? 1 : 3)} ${units}²`;
