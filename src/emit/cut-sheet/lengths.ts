import { readArea } from '../../measure/area.js';
import { exactLength, otherLength, readLength, type Ruler } from '../../measure/ruler.js';
import type { Units } from '../../measure/unit.js';
import type { Size } from '../../recipe/recipe.js';
import type { Reading } from './content.js';

/** Says lengths (mm) in the recipe's own units, the other system beside. */
export interface Lengths {
  /** As the recipe's ruler reads it: `11 1/4 in`. */
  readonly read: (mm: number) => Reading;
  /** Off the ruler, with decimals: margins, thicknesses, differences. */
  readonly exact: (mm: number) => Reading;
  /** An area in mm², off the ruler: `0.12 in²`. */
  readonly area: (mm2: number) => Reading;
  /** Both sides as the ruler reads them: `8 1/2 × 5 1/2 in`. */
  readonly readSize: (size: Size) => Reading;
  /** Both sides off the ruler: `3.54 × 1.57 in`. */
  readonly exactSize: (size: Size) => Reading;
}

export function lengths(ruler: Ruler): Lengths {
  const other: Units = ruler.units === 'in' ? 'mm' : 'in';
  const read = (mm: number): Reading => ({ read: readLength(mm, ruler), other: otherLength(mm, ruler) });
  const exact = (mm: number): Reading => ({
    read: exactLength(mm, ruler.units),
    other: exactLength(mm, other),
  });
  return {
    read,
    exact,
    area: (mm2) => ({ read: readArea(mm2, ruler.units), other: readArea(mm2, other) }),
    readSize: ({ width, height }) => sized(read(width), read(height)),
    exactSize: ({ width, height }) => sized(exact(width), exact(height)),
  };
}

/** Two lengths of one unit, the unit said once. */
const sized = (width: Reading, height: Reading): Reading => ({
  read: `${width.read.replace(/ [a-z]+$/, '')} × ${height.read}`,
  other: `${width.other.replace(/ [a-z]+$/, '')} × ${height.other}`,
});

/** Both systems in running text: `11 1/4 in (285.8 mm)`. No line is broken within a reading. */
export const both = ({ read, other }: Reading): string => `${unbroken(read)} (${unbroken(other)})`;

const unbroken = (text: string): string => text.replaceAll(' ', NO_BREAK);

/** A space at which no line is broken. */
export const NO_BREAK = '\u00a0';
