import { readNumber } from '../../grammar/number.js';
import { UNITS } from '../measure/unit.js';

/** A length as an argument (`6mm`, `1/4 in`, `0.5"`), in mm; null: it is not one, or has no unit. */
export function readLength(text: string): number | null {
  const [, image = '', unitName = ''] = /^(.*?)\s*([a-z]+|["″])$/.exec(text.trim()) ?? [];
  const unit = UNITS.get(unitName);
  const value = readNumber(image);
  return unit?.dimension === 'length' && typeof value === 'number' ? value * unit.factor : null;
}
