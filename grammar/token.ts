import type { IToken, TokenType } from 'chevrotain';
import type { Source } from '../src/text/source.js';
import type { Span } from '../src/text/span.js';

/** A number's value, a string's text, a comparison's canonical form; null: wrong, and already reported. */
export type Payload = number | string | null | undefined;

/** A stretch of the text, and what it is read as. */
export interface Token extends IToken {
  readonly payload?: Payload;
  /** Where it ends in the text (half-open), whatever it is read as; none while the parser records its grammar. */
  readonly end?: number;
}

export const makeToken = (type: TokenType, image: string, startOffset: number, payload?: Payload): Token => ({
  image,
  startOffset,
  tokenType: type,
  tokenTypeIdx: type.tokenTypeIdx as number,
  payload,
  end: startOffset + image.length,
});

/** The same stretch read as another kind of token. */
export const readAs = (type: TokenType, token: Token, payload = token.payload): Token =>
  meantAs(type, token, token.image, payload);

/** The same stretch, where something else was surely meant than what is written there. */
export const meantAs = (type: TokenType, token: Token, image: string, payload?: Payload): Token => ({
  ...makeToken(type, image, token.startOffset, payload),
  end: endOf(token),
});

/** A token that is not in the text, at an offset. */
export const absent = (type: TokenType, offset: number, payload?: Payload): Token =>
  makeToken(type, '', offset, payload);

export const is = (token: Token | undefined, ...types: readonly TokenType[]): boolean =>
  token !== undefined && types.includes(token.tokenType);

/** Where a token ends (half-open). */
export const endOf = ({ end, startOffset, image }: Token): number => end ?? startOffset + image.length;

export const spanOf = (source: Source, from: Token, to: Token = from): Span => ({
  source,
  start: from.startOffset,
  end: Math.max(endOf(to), from.startOffset),
});
