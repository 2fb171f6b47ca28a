import { printNumber, printShort } from './number.js';
import { G_PER_POUND, type Units } from './unit.js';

/** A mass in g and ounces, the system of the units first: `read`, then `other`. */
export function readMass(grams: number, units: Units): { readonly read: string; readonly other: string } {
  const metric = `${printShort(grams, 1)} g`;
  const imperial = `${printNumber(grams / (G_PER_POUND / 16), 2)} oz`;
  return units === 'in' ? { read: imperial, other: metric } : { read: metric, other: imperial };
}
