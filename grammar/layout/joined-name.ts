import { endOf, is, meantAs, spanOf, type Token } from '../token.js';
import { Word } from '../tokens.js';
import { peek, say, type Work } from './work.js';

/**
 * `side mark:` and `side_mark:` as the `side-mark` that it ought to be, where it has at most so many words and ends before
 * what `ends` knows (so many tokens ahead); null where it is one word, or something else.
 */
export function joinedName(
  work: Work,
  first: Token,
  most: number,
  ends: (ahead: number) => boolean,
): Token | null {
  const words = [first];
  let ahead = 0;
  while (!ends(ahead)) {
    const under = peek(work, ahead)?.image === '_' ? 1 : 0;
    const word = peek(work, ahead + under);
    if (word === undefined || !is(word, Word) || words.length === most) return null;
    words.push(word);
    ahead += under + 1;
  }
  const last = words.at(-1) as Token;
  if (last === first) return null;
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
