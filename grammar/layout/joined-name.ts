import type { TokenType } from 'chevrotain';
import { endOf, is, meantAs, spanOf, type Token } from '../token.js';
import { Word } from '../tokens.js';
import { peek, say, type Work } from './work.js';

/**
 * `side mark:` and `side_mark:` as the `side-mark` that it ought to be, where it has at most so many words and one of the
 * marks follows; null where it is one word, or something else.
 */
export function joinedName(
  work: Work,
  first: Token,
  most: number,
  marks: readonly TokenType[],
): Token | null {
  const words = [first];
  let ahead = 0;
  for (;;) {
    const under = peek(work, ahead)?.image === '_' ? 1 : 0;
    const word = peek(work, ahead + under);
    if (word === undefined || !is(word, Word) || words.length === most) break;
    words.push(word);
    ahead += under + 1;
  }
  const last = words.at(-1) as Token;
  if (last === first || !is(peek(work, ahead), ...marks)) return null;
  const at = spanOf(work.source, first, last);
  const image = words.map((word) => word.image).join('-');
  say(work, {
    message: 'a name of several words is joined by hyphens',
    at,
    help: `write \`${image}\``,
    fix: [{ span: at, text: image }],
  });
  work.next += ahead;
  return { ...meantAs(Word, first, image), end: endOf(last) };
}
