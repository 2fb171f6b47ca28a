import { report } from '../../src/diagnostics/problem.js';
import { limit } from '../../src/syntax/problems.js';
import { LONGEST_WORD } from '../../src/text/longest.js';
import type { Source } from '../../src/text/source.js';
import { unseenMark } from '../characters.js';
import { cropped } from '../slip.js';
import { meantAs, readAs, spanOf, type Token } from '../token.js';
import { Stray, Word } from '../tokens.js';
import type { Seen } from './look.js';

/** A word as typed, without what cannot be seen in it; one that is too long is not read. */
export function lookAtWord(token: Token, source: Source): Seen {
  if (token.image.length > LONGEST_WORD)
    return { reading: readAs(Stray, token, null), finding: tooLong(token, source) };
  if (!token.image.includes(unseenMark)) return { reading: token };
  return { reading: meantAs(Word, token, token.image.replaceAll(unseenMark, '')) };
}

const tooLong = (token: Token, source: Source) =>
  report(limit, {
    message: cropped(`\`${token.image}\` is too long for a word`),
    at: spanOf(source, token),
    why: `it has ${token.image.length} letters, and at most ${LONGEST_WORD} are read`,
    help: 'choose a shorter one; a `title` and a `note` may be as long as they like',
  });
