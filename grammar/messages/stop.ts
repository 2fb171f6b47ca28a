import type { Report } from '../../src/diagnostics/problem.js';
import type { Source } from '../../src/text/source.js';
import type { Token } from '../token.js';

/** The place where a line could not be read on. */
export interface Stop {
  readonly source: Source;
  readonly line: readonly Token[];
  readonly token: Token;
  /** The token before it on the line. */
  readonly before: Token | undefined;
  /** Those that follow it on the line. */
  readonly after: readonly Token[];
}

/** What there is to say about a stop; null where it is of another kind. */
export type Recognise = (stop: Stop) => Report | null;
