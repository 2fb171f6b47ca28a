import type { TokenType } from 'chevrotain';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import type { Report } from '../../src/diagnostics/problem.js';
import type { Source } from '../../src/text/source.js';
import type { Span } from '../../src/text/span.js';
import { endOf, is, spanOf, type Token } from '../token.js';
import {
  BlockType,
  Catalogue,
  CloseBrace,
  Colon,
  Comma,
  Eol,
  Equals,
  Minus,
  NumberToken,
  OpenBrace,
  OpenBracket,
  Text,
  Unclosed,
  Word,
} from '../tokens.js';
import { statementWords } from '../words.js';
import { slip } from '../slip.js';

/** A text being laid out: the scanned tokens before `next` are done, and `tokens` is what they became. */
export interface Work {
  readonly source: Source;
  readonly scanned: readonly Token[];
  next: number;
  readonly tokens: Token[];
  /** Statements that stood inside a block, to come after all others. */
  readonly moved: Token[];
  readonly diagnostics: Diagnostic[];
  /** The block being read. */
  open: OpenBlock | null;
  /** Where each brace that is closed finds its own: the index of that `}`. */
  readonly pairs: ReadonlyMap<Token, number>;
  statements: number;
  /** A property outside any block was reported; those that follow it are the same mistake. */
  astray: boolean;
  /** Statements that were not read, after their one finding. */
  readonly passed: Span[];
}

/** A block whose entries are being read. */
export interface OpenBlock {
  readonly brace: Token;
  /** The word that begins it: `envelope`. */
  readonly type: string;
  /** As messages name it: `envelope a6-tides`. */
  readonly name: string;
  /** Where its header may yet say what it is like; null where it does. */
  readonly likeAt: number | null;
}

export function say(work: Work, what: Report): void {
  work.diagnostics.push(slip(what));
}

/** Help and fix for a token that has no business here. */
export const remove = ({ source }: Work, token: Token): Pick<Report, 'help' | 'fix'> => ({
  help: 'take it out',
  fix: [{ span: spanOf(source, token), text: '' }],
});

export const peek = ({ scanned, next }: Work, ahead = 0): Token | undefined => scanned[next + ahead];

export function nextOnAnyLine(work: Work): Token | undefined {
  let ahead = 0;
  while (is(peek(work, ahead), Eol)) ahead++;
  return peek(work, ahead);
}

/** Passes line ends; false at the end of the text. */
export function passLineEnds(work: Work): boolean {
  while (is(peek(work), Eol)) work.next++;
  return work.next < work.scanned.length;
}

/** Passes what is left of a line; inside a block, its closing brace is left. */
export function passLine(work: Work): void {
  while (
    peek(work) !== undefined &&
    !is(peek(work), Eol) &&
    !(work.open !== null && is(peek(work), CloseBrace))
  ) {
    if (!is(peek(work), OpenBrace)) work.next++;
    else if (!passBlock(work)) return;
  }
}

/** Passes a block from its opening brace; one left open (false) ends where a statement begins. */
export function passBlock(work: Work): boolean {
  let depth = 0;
  for (let token = peek(work); token !== undefined; token = peek(work)) {
    if (is(token, OpenBrace)) depth++;
    if (is(token, CloseBrace)) depth--;
    if (is(peek(work, -1), Eol) && beginsStatement(work)) return false;
    work.next++;
    if (depth === 0) return true;
  }
  return false;
}

/** Passes a line, and the block that follows it. */
export function passStatement(work: Work): Span {
  const start = (peek(work) as Token).startOffset;
  passLine(work);
  if (is(nextOnAnyLine(work), OpenBrace)) {
    passLineEnds(work);
    passBlock(work);
  }
  return { source: work.source, start, end: endOf(peek(work, -1) as Token) };
}

export function restOfLine(work: Work): readonly Token[] {
  let end = work.next;
  while (end < work.scanned.length && !is(work.scanned[end], Eol)) end++;
  return work.scanned.slice(work.next, end);
}

export function spanOfAll({ source }: Work, tokens: readonly Token[]): Span | null {
  const [first] = tokens;
  const last = tokens.at(-1);
  return first === undefined || last === undefined ? null : spanOf(source, first, last);
}

/** Inside a block: whether the line begins a new statement, so that the block was not closed. */
export function beginsStatement(work: Work): boolean {
  const first = peek(work);
  const second = peek(work, 1);
  const type = is(first, Word) ? statementWords.get((first as Token).image) : undefined;
  if (type === undefined || is(second, Colon, Equals) || second === undefined) return false;
  if (isBlock(type)) return headerFollows(work);
  if (first?.image === 'let') return is(second, Word) && is(peek(work, 2), Equals, Colon);
  if (first?.image === 'use') return is(second, Text);
  return is(second, Word) && (is(peek(work, 2), Eol) || peek(work, 2) === undefined);
}

/** Whether a brace opens at the end of this line or at the beginning of the next; of the line, so much is passed. */
export function headerFollows(work: Work, passed = 1): boolean {
  let ahead = passed;
  for (; !is(peek(work, ahead), Eol, OpenBrace) && peek(work, ahead) !== undefined; ahead++) {
    if (is(peek(work, ahead), Colon, Comma, CloseBrace) || ahead > 8) return false;
  }
  while (is(peek(work, ahead), Eol)) ahead++;
  return is(peek(work, ahead), OpenBrace);
}

/** Whether the block around goes on after the statement that begins here: then it was meant to stand inside. */
export function goesOnAfter(work: Work): boolean {
  const ahead = { ...work };
  if (isBlock(statementWords.get(peek(work)?.image ?? ''))) {
    while (peek(ahead) !== undefined && !is(peek(ahead), OpenBrace)) ahead.next++;
    const end = work.pairs.get(peek(ahead) as Token);
    if (end === undefined) return false;
    ahead.next = end + 1;
  } else passLine(ahead);
  if (is(nextOnAnyLine(ahead), CloseBrace)) return true;
  passLineEnds(ahead);
  return looksLikeEntry(ahead);
}

/** `NAME:`, `NAME =`, `expect NAME` */
export function looksLikeEntry(work: Work): boolean {
  const first = peek(work);
  if (first === undefined || !is(first, Word)) return false;
  if (first.image === 'section' && is(peek(work, 1), Text)) return true;
  return is(peek(work, 1), Colon, Equals) || (first.image === 'expect' && is(peek(work, 1), Word));
}

/** Whether a statement of this kind has a block. */
export const isBlock = (type: TokenType | undefined): boolean => type === BlockType || type === Catalogue;

/** Whether nothing stands before the next token on its line. */
export const beginsItsLine = (work: Work): boolean => peek(work, -1) === undefined || is(peek(work, -1), Eol);

export const beginsValue = (token: Token | undefined): boolean =>
  is(token, Word, NumberToken, Text, Unclosed, OpenBracket, Minus);

/** Where the comment ends that follows on the same line; the offset itself where none does. */
export function afterComment({ source }: Work, offset: number): number {
  const comment = /[ \t]*#[^\r\n]*/y;
  comment.lastIndex = offset;
  return comment.test(source.text) ? comment.lastIndex : offset;
}

/** `envelope a6-tides`, as far as it is there. */
export const blockName = (type: Token, name: Token | undefined): string =>
  is(name, Word) ? `\`${type.image} ${name?.image}\`` : `this ${type.image}`;
