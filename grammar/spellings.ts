import type { TokenType } from 'chevrotain';
import {
  BlockType,
  CloseBrace,
  CloseBracket,
  Colon,
  Comma,
  Compare,
  Eol,
  Equals,
  Expect,
  FirstOfPhrase,
  Let,
  Like,
  Minus,
  NumberToken,
  OpenBrace,
  OpenBracket,
  Plus,
  PlusMinus,
  Slash,
  Star,
  Text,
  Unit,
  Units,
  Use,
  Word,
  X,
} from './tokens.js';

/** How a kind of token is written in a recipe: by one of a few signs, or as what a name stands for. */
export type Spelling =
  | { readonly type: TokenType; readonly signs: readonly string[] }
  | { readonly type: TokenType; readonly name: string; readonly means: string };

/** Every kind of token that the grammar asks for, as a reader of it knows it. */
export const SPELLINGS: readonly Spelling[] = [
  { type: Units, signs: ['units'] },
  { type: Use, signs: ['use'] },
  { type: Let, signs: ['let'] },
  { type: BlockType, signs: ['paper', 'style', 'envelope'] },
  { type: Like, signs: ['like'] },
  { type: Expect, signs: ['expect'] },
  { type: Word, name: 'word', means: 'a letter, then letters, digits and single hyphens' },
  { type: FirstOfPhrase, name: 'first-word', means: 'a word that another word or a number follows' },
  { type: Text, name: 'string', means: 'straight double quotes about any text of one line' },
  { type: NumberToken, name: 'numeral', means: '12, 0.5, .5, 1/2, 5 1/2, or a fraction in one character' },
  {
    type: Unit,
    name: 'unit',
    means: 'right after a number a word, an inch mark or %; after lb also the grade of the paper',
  },
  { type: Equals, signs: ['='] },
  { type: Compare, signs: ['<', '<=', '≤', '>', '>=', '≥'] },
  { type: PlusMinus, signs: ['+-', '±'] },
  { type: Plus, signs: ['+'] },
  { type: Minus, signs: ['-'] },
  { type: Star, signs: ['*'] },
  { type: Slash, signs: ['/'] },
  { type: X, signs: ['x', '×'] },
  { type: Colon, signs: [':'] },
  { type: Comma, signs: [','] },
  { type: OpenBrace, signs: ['{'] },
  { type: CloseBrace, signs: ['}'] },
  { type: OpenBracket, signs: ['('] },
  { type: CloseBracket, signs: [')'] },
  { type: Eol, name: 'line-end', means: 'one or more ends of lines, or the end of the file' },
];
