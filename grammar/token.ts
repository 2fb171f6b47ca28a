import type { IToken, TokenType } from 'chevrotain';
import type { Source } from '../src/text/source.js';
import type { Span } from '../src/text/span.js';

/** A scanned token. */
export interface Token extends IToken {
  /** A number's value, a string's text, a comparison's canonical form; null: wrong, and already reported. */
  payload?: number | string | null;
}

export const is = (token: Token | undefined, ...types: readonly TokenType[]): boolean =>
  token !== undefined && types.includes(token.tokenType);

/** Where a token ends (half-open). */
export const endOf = (token: Token): number => token.startOffset + token.image.length;

export const spanOf = (source: Source, from: Token, to: Token = from): Span => ({
  source,
  start: from.startOffset,
  end: Math.max(endOf(to), from.startOffset),
});

/** The same place read as another kind of token. */
export const readAs = (type: TokenType, token: Token, payload = token.payload): Token => ({
  image: token.image,
  startOffset: token.startOffset,
  tokenType: type,
  tokenTypeIdx: type.tokenTypeIdx as number,
  ...(payload === undefined ? {} : { payload }),
});

/** A token that is not in the text, at an offset. */
export const absent = (type: TokenType, offset: number): Token => ({
  image: '',
  startOffset: offset,
  tokenType: type,
  tokenTypeIdx: type.tokenTypeIdx as number,
});
