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

/** The words that are units when they follow a number; the grade that follows `lb` is any word. */
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

/** What people write for a unit, and what to write instead. */
export const otherUnits: ReadonlyMap<string, string> = new Map([
  ['inch', 'in'],
  ['inches', 'in'],
  ['ins', 'in'],
  ['millimeter', 'mm'],
  ['millimeters', 'mm'],
  ['millimetre', 'mm'],
  ['millimetres', 'mm'],
  ['centimeter', 'cm'],
  ['centimeters', 'cm'],
  ['centimetre', 'cm'],
  ['centimetres', 'cm'],
  ['mils', 'mil'],
  ['thou', 'mil'],
  ['pt', 'mil'],
  ['pts', 'mil'],
  ['point', 'mil'],
  ['points', 'mil'],
  ['micron', 'um'],
  ['microns', 'um'],
  ['µm', 'um'],
  ['gr', 'g'],
  ['gram', 'g'],
  ['grams', 'g'],
  ['gramme', 'g'],
  ['ounce', 'oz'],
  ['ounces', 'oz'],
  ['lbs', 'lb'],
  ['pound', 'lb'],
  ['pounds', 'lb'],
  ['percent', '%'],
]);
