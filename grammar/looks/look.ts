import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import type { Source } from '../../src/text/source.js';
import type { Token } from '../token.js';

/** What a token is read as (null: nothing at all), and what there is to say about how it is written. */
export interface Seen {
  readonly reading: Token | null;
  readonly finding?: Diagnostic;
}

/** A closer look at a token, and at the one before it. */
export type Look = (token: Token, source: Source, before: Token | undefined) => Seen;
