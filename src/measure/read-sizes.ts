import { otherLength, readLength, type Ruler } from './ruler.js';

/** `8 3/4 × 5 3/4 in (222.3 × 145.9 mm)` */
export const readSizes = (
  { width, height }: { readonly width: number; readonly height: number },
  ruler: Ruler,
): string =>
  `${bare(readLength(width, ruler))} × ${readLength(height, ruler)} (${bare(otherLength(width, ruler))} × ${otherLength(height, ruler)})`;

/** A length without its unit. */
const bare = (length: string): string => length.replace(/ [a-z]+$/, '');
