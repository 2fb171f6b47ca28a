import type { TokenType } from 'chevrotain';
import { BlockType, Let, Units, Use } from './tokens.js';

/** The words that begin a statement. */
export const statementWords: ReadonlyMap<string, TokenType> = new Map([
  ['units', Units],
  ['use', Use],
  ['let', Let],
  ['paper', BlockType],
  ['style', BlockType],
  ['envelope', BlockType],
]);

/** The units that are words; the grade that follows `lb` may be any word. */
export const unitWords: ReadonlySet<string> = new Set([
  'mm',
  'cm',
  'in',
  'mil',
  'um',
  'gsm',
  'lb',
  'g',
  'oz',
]);

/** `5inx7in`: a unit, an `x` and a second side in one word. */
export const gluedSize = /^(mm|cm|in|mil)x(\d*)([a-z]*)$/i;
