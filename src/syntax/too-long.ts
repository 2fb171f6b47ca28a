import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { report } from '../diagnostics/problem.js';
import { LONGEST_TEXT } from '../text/longest.js';
import type { Source } from '../text/source.js';
import { limit } from './problems.js';

/** The finding about a text longer than is read, at its start. `size`: in `unit`s; null: only known to be more. */
export const tooLong = (source: Source, size: number | null, unit: 'bytes' | 'characters'): Diagnostic =>
  report(limit, {
    message: 'this file is too long to be a recipe',
    at: { source, start: 0, end: 0 },
    why: lengthRead(size, unit),
    help: 'split it, and join the parts by `use`',
  });

/** `it has 1,200,000 bytes, and at most 1,000,000 are read` */
export const lengthRead = (size: number | null, unit: 'bytes' | 'characters'): string =>
  size === null
    ? `it has more than ${grouped(LONGEST_TEXT)} ${unit}, which is the most that is read`
    : `it has ${grouped(size)} ${unit}, and at most ${grouped(LONGEST_TEXT)} are read`;

const grouped = (count: number): string => `${count}`.replace(/\B(?=(\d{3})+$)/g, ',');
