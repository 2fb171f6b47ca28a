/*
 * grammar/: the language itself, from a text to its tree; the only room that knows the parser library.
 * In: a source. Out: the tree of the file, and a finding for every slip of writing.
 * Refuses to know: what a property, a size or a name means.
 */
import { createToken, type TokenType } from 'chevrotain';
import { unseenMark } from './characters.js';
import { fractionGlyphs } from './number.js';

const kind = (name: string): TokenType => createToken({ name });

export const Space = kind('Space');
export const Comment = kind('Comment');
export const Eol = kind('Eol');
export const Text = kind('Text');
export const NumberToken = kind('Number');
export const Word = kind('Word');
/** `x` stands alone or before a digit; any other word beginning with x is a word. */
export const X = kind('X');
export const OpenBrace = kind('OpenBrace');
export const CloseBrace = kind('CloseBrace');
export const OpenBracket = kind('OpenBracket');
export const CloseBracket = kind('CloseBracket');
export const Colon = kind('Colon');
export const Comma = kind('Comma');
export const Semicolon = kind('Semicolon');
export const Equals = kind('Equals');
export const Compare = kind('Compare');
export const PlusMinus = kind('PlusMinus');
export const Plus = kind('Plus');
export const Minus = kind('Minus');
export const Star = kind('Star');
export const Slash = kind('Slash');
export const Percent = kind('Percent');
export const InchMark = kind('InchMark');

// What only looks like one of these: lexer.ts reports it and reads it as what it looks like.
export const OddInch = kind('OddInch');
export const OddText = kind('OddText');
export const OddX = kind('OddX');
/** A foot's mark. */
export const Feet = kind('Feet');
/** `#` for pounds of paper. */
export const OddPounds = kind('OddPounds');
/** `g/m²` and the like. */
export const OddGrammage = kind('OddGrammage');
/** The point of an abbreviated unit. */
export const OddPoint = kind('OddPoint');
/** A comment as other languages write it. */
export const OddComment = kind('OddComment');
/** A character as a web page spells it. */
export const OddEntity = kind('OddEntity');
/** A line of back quotes around a recipe. */
export const Fence = kind('Fence');
/** A string without its end; it leaves a closing brace and a comment alone. */
export const Unclosed = kind('Unclosed');
/** What no token begins with. */
export const Stray = kind('Stray');

// Words get their meaning from their place: layout.ts and line.ts turn a `Word` into one of these.
export const Units = kind('Units');
export const Use = kind('Use');
export const Let = kind('Let');
/** `paper`, `style`, `envelope` */
export const BlockType = kind('BlockType');
export const Catalogue = kind('Catalogue');
export const Section = kind('Section');
export const Like = kind('Like');
export const Expect = kind('Expect');
/** `post` after `expect`, where a class of post follows. */
export const Post = kind('Post');
/** A word that others, or values, follow without a sign between them. */
export const FirstOfPhrase = kind('FirstOfPhrase');
/** What follows a number: a word, an inch mark, `%`; after `lb` also the paper's grade. */
export const Unit = kind('Unit');

/** What the parser is handed. */
export const vocabulary: readonly TokenType[] = [
  ...[Eol, Text, NumberToken, Word, X, OpenBrace, CloseBrace, OpenBracket, CloseBracket, Colon, Comma],
  ...[Equals, Compare, PlusMinus, Plus, Minus, Star, Slash, Percent, InchMark, Unclosed, Stray],
  ...[Units, Use, Let, BlockType, Catalogue, Section, Like, Expect, Post, FirstOfPhrase, Unit],
];

const lower = 'abcdefghijklmnopqrstuvwxyz';
const upper = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const digits = '0123456789';
const digit = `[0-9${fractionGlyphs}]`;

/** Whatever digits are joined by, right or wrong, so that one number is one token and a wrong one is one finding. */
const joined = `\\.?${digit}(?:${digit}|[-.,/⁄−–]+(?=${digit}))*\\.?(?:[eE][-+]?[0-9]+)?`;
/** The fraction of a mixed number. */
const fraction = `(?=[0-9]+[/⁄]|[${fractionGlyphs}])${joined}`;

/** What goes on in a word; what cannot be seen parts none. */
const letters = `(?:[A-Za-z0-9]|${unseenMark}+(?=[A-Za-z0-9]))*`;
/** Grades that a weight in pounds is followed by. */
const grades = 'text|cover|bond|index|bristol|tag|book|offset|writing|ledger';

/** As people write it after `g/`. With spaces about the stroke, `m2` may be a name as well. */
const squareMetre = '(?:m2|m²|sqm|qm|m\\^2)';

/** How a kind of token is found: the characters it may begin with, and its pattern (sticky, linear). */
export interface Scanned {
  readonly type: TokenType;
  readonly first: string;
  readonly pattern: RegExp;
}

/** In the order in which they are tried. An inch mark touches its number, so it is tried before a string. */
export const scanned: readonly Scanned[] = [
  { type: Space, first: ` \t${unseenMark}`, pattern: new RegExp(`[ \\t${unseenMark}]+`, 'y') },
  {
    type: OddPounds,
    first: '#',
    pattern: new RegExp(`(?<=${digit})#(?=[ \\t]*(?:${grades})[ \\t]*(?:[\\r\\n}#]|$))`, 'y'),
  },
  { type: Comment, first: '#', pattern: /#[^\r\n]*/y },
  { type: Eol, first: '\r\n', pattern: /\r\n|\r|\n/y },
  { type: InchMark, first: '"″', pattern: new RegExp(`(?<=${digit})["″]`, 'y') },
  { type: OddInch, first: "″“”'’′", pattern: new RegExp(`(?<=${digit})(?:[“”]|''|’’|′′)|″`, 'y') },
  { type: Feet, first: "'’′", pattern: new RegExp(`(?<=${digit})['’′]`, 'y') },
  { type: Text, first: '"', pattern: /"(?:[^"\\\r\n]|\\[^\r\n])*"/y },
  { type: OddText, first: '“”„', pattern: /[“”„][^“”„"\r\n]*[“”"]/y },
  { type: OddText, first: '"', pattern: /"[^“”"\\\r\n]*”/y },
  { type: Fence, first: '`', pattern: /(?<=^|[\r\n])```[^\r\n]*/y },
  { type: OddText, first: "'`‘", pattern: /(?<![A-Za-z])'[^'\r\n]*'|`[^`\r\n]*`|‘[^‘’\r\n]*’/y },
  { type: OddText, first: '＂', pattern: /＂[^＂\r\n]*＂/y },
  { type: OddText, first: '&', pattern: /&quot;(?:[^&\r\n]|&(?!quot;))*&quot;/y },
  { type: OddComment, first: '<', pattern: /<!--[\s\S]*?-->|<!--[\s\S]*/y },
  { type: Compare, first: '&', pattern: /&[lg]t;/y },
  { type: OddEntity, first: '&', pattern: /&(?:#[0-9]{1,6}|[A-Za-z]{2,8}[0-9]{0,2});/y },
  { type: Unclosed, first: '"', pattern: /"[^"\r\n}#]*/y },
  {
    type: NumberToken,
    first: `.${digits}${fractionGlyphs}`,
    pattern: new RegExp(`${joined}(?:[ \\t]+${fraction})?`, 'y'),
  },
  {
    type: OddPoint,
    first: '.',
    pattern: new RegExp(`(?<=${digit}[ \\t]?(?:in|mm|cm|lb|oz))\\.(?!${digit})`, 'y'),
  },
  {
    type: OddGrammage,
    first: 'gG',
    pattern: new RegExp(
      `(?<=${digit}[ \\t]*)(?:gr?|gms?)(?:/${squareMetre}|[ \\t]+per[ \\t]+${squareMetre}|[ \\t]*/[ \\t]*m(?:²|\\^2))`,
      'iy',
    ),
  },
  { type: OddX, first: 'bB', pattern: /by(?=[ \t]+[0-9.(])/iy },
  { type: X, first: 'x×', pattern: /×|x(?![A-Za-z-])/y },
  { type: OddX, first: 'XхХ✕✖⨯', pattern: /X(?![A-Za-z-])|[хХ✕✖⨯](?![A-Za-zа-яА-Я-])/y },
  {
    type: Word,
    first: lower + upper,
    pattern: new RegExp(`[A-Za-z]${letters}(?:${unseenMark}*-${unseenMark}*[A-Za-z0-9]${letters})*`, 'y'),
  },
  { type: OddComment, first: '/', pattern: /\/\/[^\r\n]*|\/\*[\s\S]*?\*\/|\/\*[\s\S]*/y },
  { type: OddComment, first: '-', pattern: /(?<=^|[ \t\r\n])--[^\r\n]*/y },
  { type: OpenBrace, first: '{', pattern: /\{/y },
  { type: CloseBrace, first: '}', pattern: /\}/y },
  { type: OpenBracket, first: '(', pattern: /\(/y },
  { type: CloseBracket, first: ')', pattern: /\)/y },
  { type: Colon, first: ':', pattern: /:/y },
  { type: Comma, first: ',', pattern: /,/y },
  { type: Semicolon, first: ';', pattern: /;/y },
  { type: Equals, first: '=', pattern: /=(?![=<>!])/y },
  { type: Compare, first: '=<>!≤≥≠', pattern: /!?[=<>≤≥≠][=<>!≤≥≠]*/y },
  { type: PlusMinus, first: '±+', pattern: /±|\+\/-|\+-/y },
  { type: Plus, first: '+', pattern: /\+/y },
  { type: Minus, first: '-−–—', pattern: /[-−–—]/y },
  { type: Star, first: '*', pattern: /\*/y },
  { type: Slash, first: '/', pattern: /\//y },
  { type: Percent, first: '%', pattern: /%/y },
];
