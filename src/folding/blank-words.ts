import { readSizes } from '../measure/read-sizes.js';
import { otherLength, readLength, type Ruler } from '../measure/ruler.js';
import { sameLength } from '../measure/slack.js';
import type { Folding } from './folding.js';

/** `Blank 11 1/4 in square (285.8 mm)` */
export const blankWords = ({ made: { blank } }: Folding, ruler: Ruler): string =>
  sameLength(blank.width, blank.height)
    ? `Blank ${readLength(blank.width, ruler)} square (${otherLength(blank.width, ruler)})`
    : `Blank ${readSizes(blank, ruler)}`;
