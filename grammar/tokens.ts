/*
 * grammar/: the language itself, from a text to its tree; the only room that knows the parser library.
 * In: a source. Out: the tree of the file, and a finding for every slip of writing.
 * Refuses to know: what a property, a size or a name means.
 */
import { createToken, Lexer, type TokenType } from 'chevrotain';
import { fractionGlyphs } from './number.js';

/** Scanned and passed over. */
const Space = token('Space', 'a space', /[ \t]+/, [' ', '\t'], Lexer.SKIPPED);
export const Comment = token('Comment', 'a comment', /#[^\r\n]*/, ['#'], 'comments');
export const Eol = token('Eol', 'the end of the line', /\r\n|\r|\n/, ['\r', '\n']);

const digits = [...'0123456789', ...fractionGlyphs];
const inchMarks = ['"', '″', '“', '”', "'", '’', '′'];

/** An inch mark touches the number before it, so it is looked for before the string. `OddInch` is one typed otherwise. */
const InchMark = token('InchMark', 'an inch mark', after(`["″]`), ['"', '″']);
export const OddInch = token('OddInch', 'an inch mark', after(`(?:[“”]|''|’’|′′)|″`), inchMarks);

export const Text = token('Text', 'a string', /"(?:[^"\\\r\n]|\\[^\r\n])*"/, ['"']);
/** A string in other quotation marks; one that begins straight may end curly. */
export const OddText = token(
  'OddText',
  'a string',
  /[“”„][^“”„"\r\n]*[“”"]|"[^“”"\\\r\n]*”|'[^'\r\n]*'|`[^`\r\n]*`/,
  ['“', '”', '„', '"', "'", '`'],
);
/** A string without its end. It leaves a closing brace and a comment alone. */
export const Unclosed = token('Unclosed', 'a string', /"[^"\r\n}#]*/, ['"']);

/** Whatever digits are joined by, right or wrong, so that one number is one token and a wrong one is one finding. */
export const NumberToken = token('Number', 'a number', numberPattern(), ['.', ...digits]);

/** Stands alone or before a digit; any other word beginning with x is a word. */
export const X = token('X', '`x`', /×|x(?![A-Za-z-])/, ['x', '×']);
/** A cross typed otherwise: a capital, a Cyrillic letter, a dingbat. */
export const OddX = token('OddX', '`x`', /X(?![A-Za-z-])|[хХ✕✖⨯](?![A-Za-zа-яА-Я-])/, [...'XхХ✕✖⨯']);
export const Word = token('Word', 'a word', /[A-Za-z][A-Za-z0-9]*(?:-[A-Za-z0-9]+)*/, letters());

export const OpenBrace = token('OpenBrace', '`{`', /\{/, ['{']);
export const CloseBrace = token('CloseBrace', '`}`', /\}/, ['}']);
export const OpenBracket = token('OpenBracket', '`(`', /\(/, ['(']);
export const CloseBracket = token('CloseBracket', '`)`', /\)/, [')']);
export const Colon = token('Colon', '`:`', /:/, [':']);
export const Comma = token('Comma', '`,`', /,/, [',']);
export const Semicolon = token('Semicolon', '`;`', /;/, [';']);
export const Equals = token('Equals', '`=`', /=(?![=<>!])/, ['=']);
export const Compare = token('Compare', 'a comparison', /[=<>!≤≥≠]+/, [...'=<>!≤≥≠']);
export const PlusMinus = token('PlusMinus', '`+-`', /±|\+\/-|\+-/, ['±', '+']);
export const Plus = token('Plus', '`+`', /\+/, ['+']);
export const Minus = token('Minus', '`-`', /[-−–—]/, [...'-−–—']);
export const Star = token('Star', '`*`', /\*/, ['*']);
export const Slash = token('Slash', '`/`', /\//, ['/']);
const Percent = token('Percent', '`%`', /%/, ['%']);

/** Words get their meaning from their place: layout.ts turns a `Word` into one of these. */
export const Units = byPlace('Units', '`units`');
export const Use = byPlace('Use', '`use`');
export const Let = byPlace('Let', '`let`');
export const BlockType = byPlace('BlockType', '`paper`, `style` or `envelope`');
export const Like = byPlace('Like', '`like`');
export const Expect = byPlace('Expect', '`expect`');
/** After a number: a word that is a unit, an inch mark, `%`; after `lb`, also the paper's grade. */
export const Unit = byPlace('Unit', 'a unit');
/** What no token begins with. */
export const Stray = byPlace('Stray', 'a character without a meaning here');

/** Tokens that may be a unit when they follow a number. */
export const unitMarks: readonly TokenType[] = [InchMark, OddInch, Percent];

/** In the order in which they are tried. */
export const scanned: readonly TokenType[] = [
  Space,
  Comment,
  Eol,
  InchMark,
  OddInch,
  Text,
  OddText,
  Unclosed,
  NumberToken,
  X,
  OddX,
  Word,
  OpenBrace,
  CloseBrace,
  OpenBracket,
  CloseBracket,
  Colon,
  Comma,
  Semicolon,
  Equals,
  Compare,
  PlusMinus,
  Plus,
  Minus,
  Star,
  Slash,
  Percent,
];

export const vocabulary: readonly TokenType[] = [
  ...scanned,
  Units,
  Use,
  Let,
  BlockType,
  Like,
  Expect,
  Unit,
  Stray,
];

/** Names the characters it may start with, so that building the lexer analyses no pattern. */
function token(
  name: string,
  label: string,
  pattern: RegExp,
  starts: readonly string[],
  group?: string,
): TokenType {
  return createToken({
    name,
    label,
    pattern,
    start_chars_hint: [...starts],
    line_breaks: name === 'Eol',
    ...(group === undefined ? {} : { group }),
  });
}

function byPlace(name: string, label: string): TokenType {
  return createToken({ name, label, pattern: Lexer.NA });
}

/** A pattern that must touch the number before it. */
function after(pattern: string): RegExp {
  return new RegExp(`(?<=[0-9${fractionGlyphs}])${pattern}`);
}

function letters(): string[] {
  return [...'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ'];
}

/**
 * Digits and what joins them, a trailing point or exponent, and the fraction of a mixed number after a space.
 * Each step is decided by the next character or by one look over the next number: linear.
 */
function numberPattern(): RegExp {
  const digit = `[0-9${fractionGlyphs}]`;
  const joined = `\\.?${digit}(?:${digit}|[-.,/⁄−–]+(?=${digit}))*\\.?(?:[eE][-+]?[0-9]+)?`;
  const fraction = `(?=[0-9]+[/⁄]|[${fractionGlyphs}])${joined}`;
  return new RegExp(`${joined}(?:[ \\t]+${fraction})?`);
}
