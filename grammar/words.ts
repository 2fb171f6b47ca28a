import type { TokenType } from 'chevrotain';
import { BlockType, Catalogue, Let, Units, Use } from './tokens.js';

/** The words that begin a statement. */
export const statementWords: ReadonlyMap<string, TokenType> = new Map([
  ['units', Units],
  ['use', Use],
  ['let', Let],
  ['paper', BlockType],
  ['style', BlockType],
  ['envelope', BlockType],
  ['batch', BlockType],
  ['catalogue', Catalogue],
]);

/** What begins a statement elsewhere, and the word for it here. */
export const otherStatementWords: ReadonlyMap<string, string> = new Map([
  ['import', 'use'],
  ['include', 'use'],
  ['require', 'use'],
  ['from', 'use'],
  ['var', 'let'],
  ['const', 'let'],
  ['set', 'let'],
  ['def', 'let'],
  ['define', 'let'],
  ['class', 'style'],
  ['template', 'style'],
  ['stock', 'paper'],
  ['recipe', 'envelope'],
  ['order', 'batch'],
  ['job', 'batch'],
  ['catalog', 'catalogue'],
  ['book', 'catalogue'],
]);

/** What is written for `like` in a header. */
export const likeWords: ReadonlySet<string> = new Set([
  'like',
  'extends',
  'inherits',
  'from',
  'as',
  'uses',
  'likes',
  'is',
  'of',
]);

/** What opens a block elsewhere, and what closes one. */
export const openers: ReadonlySet<string> = new Set(['begin', 'do', '(', '[', ':']);
export const closers: ReadonlySet<string> = new Set(['end', ')', ']']);

/** What is written for the sign of an `expect`; `is` or `must be` may stand before each. */
export const comparisonWords: ReadonlyMap<string, string> = new Map([
  ['is', '='],
  ['be', '='],
  ['must be', '='],
  ['equals', '='],
  ['equal', '='],
  ['equal to', '='],
  ['eq', '='],
  ['above', '>'],
  ['over', '>'],
  ['more than', '>'],
  ['greater than', '>'],
  ['larger than', '>'],
  ['at least', '>='],
  ['no less than', '>='],
  ['not less than', '>='],
  ['below', '<'],
  ['under', '<'],
  ['less than', '<'],
  ['smaller than', '<'],
  ['at most', '<='],
  ['up to', '<='],
  ['no more than', '<='],
  ['not more than', '<='],
]);

/** What is said after a length, and says no more than its property does. */
export const describingWords: ReadonlySet<string> = new Set([
  'deep',
  'wide',
  'thick',
  'high',
  'tall',
  'long',
  'broad',
  'across',
]);

/** The word that folds a sheet into so many parts. */
export const foldingWords: ReadonlyMap<string, string> = new Map([
  ['2', 'half'],
  ['3', 'third'],
  ['4', 'quarter'],
]);

/** Names that are worked out from a recipe and are no properties: an `expect` asks for them, nothing states them. */
export const askedOnly: ReadonlySet<string> = new Set([
  'face-width',
  'face-height',
  'side-score',
  'seal-score',
  'bottom-score',
  'second-side-score',
  'second-seal-score',
  'second-bottom-score',
  'second-side-mark',
  'second-seal-mark',
  'second-bottom-mark',
  'side-flap',
  'seal-flap',
  'bottom-flap',
  'crossing',
  'seam-overlap',
  'closure',
  'bare',
  'room-width',
  'room-height',
  'room-depth',
  'thickness',
  'mass',
  'per-sheet',
  'layers',
  'seam-length',
  'diagonal',
  'tape-length',
  'liner-width',
  'liner-height',
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

/** What is written for `units mm`, `units cm` and `units in`. */
export const fileUnits: ReadonlyMap<string, string> = new Map([
  ['mm', 'mm'],
  ['cm', 'cm'],
  ['in', 'in'],
  ['inch', 'in'],
  ['inches', 'in'],
]);

/** `5inx7in`: a unit, an `x` and a second side in one word. */
export const gluedSize = /^(mm|cm|in|mil)x(\d*)([a-z]*)$/i;

/** `2mm-3mm`: a unit, a hyphen and a second value in one word. */
export const gluedRange = /^(mm|cm|in|mil|um)-(\d+)([a-z]*)$/i;
