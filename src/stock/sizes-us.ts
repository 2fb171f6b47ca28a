import { MM_PER } from '../measure/unit.js';
import type { SizeRow } from './sizes-iso.js';

const INCH = MM_PER.in;

/** Sheets: ANSI/ASME Y14.1 (letter, tabloid), industry custom (legal). */
export const US_SHEETS: readonly SizeRow[] = [
  ['letter', 8.5 * INCH, 11 * INCH, 'wikiY14;pwg'],
  ['legal', 8.5 * INCH, 14 * INCH, 'pwg;fine'],
  ['tabloid', 11 * INCH, 17 * INCH, 'wikiY14;pwg'],
];

/** The card that usually goes into a US announcement envelope of that name: industry custom, the first advice of several. */
export const US_CARDS: readonly SizeRow[] = [
  ['us-a1', 3.5 * INCH, 4.875 * INCH, 'wnf;thoughtco'],
  ['us-a2', 4.25 * INCH, 5.5 * INCH, 'wnf;thoughtco;eba'],
  ['us-a6', 4.5 * INCH, 6.25 * INCH, 'thoughtco;mensing'],
  ['us-a7', 5 * INCH, 7 * INCH, 'thoughtco;eba;wnf'],
  ['us-a8', 5.25 * INCH, 7.875 * INCH, 'thoughtco;eba'],
  ['us-a9', 5.5 * INCH, 8.5 * INCH, 'wnf'],
  ['us-a10', 5.75 * INCH, 9.25 * INCH, 'thoughtco;eba'],
];
