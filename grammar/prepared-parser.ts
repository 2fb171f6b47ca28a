import {
  EarlyExitException,
  EmbeddedActionsParser,
  type IToken,
  NoViableAltException,
  type TokenType,
} from 'chevrotain';
import LOOKAHEAD from './lookahead.json' with { type: 'json' };
import { vocabulary } from './tokens.js';

/** What the library's published types leave out, and is used here. */
export interface Inside {
  selfAnalysisDone: boolean;
  /** By the key of a place in the grammar: what of it the next token leads into. */
  readonly lookAheadFuncsCache: Map<number, Next>;
  SAVE_ERROR(error: Error): Error;
}

/** Which of some alternatives the next token leads into; or whether into what may be left out, or repeated. */
export type Next = (this: Ahead) => number | boolean | undefined;

/** Looks at the next token; the second way is the library's own. */
interface Ahead {
  LA(ahead: 1): IToken;
  LA_FAST(ahead: 1): IToken;
}

/** A place in the grammar: the names of the tokens that lead into each of its alternatives, or into what may be left out. */
export interface Place {
  readonly key: number;
  readonly alternatives?: readonly (readonly string[])[];
  readonly optional?: readonly string[];
}

/**
 * A parser that knows what may come next. The library finds that out at every start, from its own record of the grammar, which takes
 * longer than most recipes; here it is read from a table that the tests hold to what the library finds (generate/lookahead.ts).
 */
export class PreparedParser extends EmbeddedActionsParser {
  /** In place of the library's analysis. */
  protected prepare(): void {
    const { lookAheadFuncsCache } = inside(this);
    for (const place of LOOKAHEAD as readonly Place[]) lookAheadFuncsCache.set(place.key, nextOf(place));
    inside(this).selfAnalysisDone = true;
  }

  // The library would look up in its record what might have come; nobody is told (recipe-parser.ts).
  protected raiseNoAltException(): never {
    throw inside(this).SAVE_ERROR(new NoViableAltException('', this.LA(1), this.LA(0)));
  }

  protected raiseEarlyExitException(): never {
    throw inside(this).SAVE_ERROR(new EarlyExitException('', this.LA(1), this.LA(0)));
  }
}

export const inside = (parser: EmbeddedActionsParser): Inside => parser as unknown as Inside;

const types = new Map(vocabulary.map((type): [string, TokenType] => [type.name, type]));

function nextOf({ alternatives, optional = [] }: Place): Next {
  if (alternatives === undefined) {
    const into = new Set(optional.map(numberOf));
    return function () {
      return into.has(this.LA_FAST(1).tokenTypeIdx);
    };
  }
  const into = new Map(alternatives.flatMap((names, index) => names.map((name) => [numberOf(name), index])));
  return function () {
    return into.get(this.LA_FAST(1).tokenTypeIdx);
  };
}

const numberOf = (name: string): number | undefined => types.get(name)?.tokenTypeIdx;
