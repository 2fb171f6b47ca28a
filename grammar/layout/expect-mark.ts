import { nearest } from '../../src/text/nearest.js';
import { is, readAs, spanOf, type Token } from '../token.js';
import { Colon, Compare, Equals, Expect, NumberToken, Word } from '../tokens.js';
import { comparisonWords } from '../words.js';
import { isMark, mendEquals } from './marks.js';
import { beginsValue, peek, say, type Work } from './work.js';

/** `expect NAME =`, as far as it is there; false where the entry, begun by `first`, is no such thing. */
export function readExpectMark(work: Work, first: Token): boolean {
  if (!isExpect(work, first)) return false;
  if (is(peek(work), Colon)) {
    const colon = peek(work) as Token;
    say(work, {
      message: 'no `:` follows `expect`',
      at: spanOf(work.source, colon),
      help: 'take it out',
      fix: [{ span: spanOf(work.source, colon), text: '' }],
    });
    work.next++;
  }
  work.tokens.push(readAs(Expect, first));
  mendComparison(work);
  return true;
}

/** The word itself, or one that is surely meant for it: `expects blank > 5`, `expect: blank = 11`. */
function isExpect(work: Work, first: Token): boolean {
  const colon = is(peek(work), Colon) ? 1 : 0;
  const compares = is(peek(work, colon), Word) && is(peek(work, colon + 1), Compare, Equals);
  if (first.image === 'expect') return colon === 0 || compares;
  if (!compares || nearest(first.image, ['expect', 'assert']).length === 0) return false;
  const at = spanOf(work.source, first);
  say(work, {
    message: `\`${first.image}\` is written \`expect\` here`,
    at,
    help: 'write `expect`',
    fix: [{ span: at, text: 'expect' }],
  });
  return true;
}

/** A word, a colon or nothing at all where a sign compares. */
function mendComparison(work: Work): void {
  const name = peek(work);
  const second = peek(work, 1);
  const sign = is(second, Word) ? comparisonWords.get(second?.image ?? '') : undefined;
  if (name !== undefined && second !== undefined && sign !== undefined && beginsValue(peek(work, 2))) {
    const at = spanOf(work.source, second);
    say(work, {
      message: `an \`expect\` compares by a sign, not by \`${second.image}\``,
      at,
      help: `write \`${sign}\``,
      fix: [{ span: at, text: sign }],
    });
    work.tokens.push(name, readAs(sign === '=' ? Equals : Compare, second, sign));
    work.next += 2;
    return;
  }
  const after = { ...work, next: work.next + 1 };
  if (is(second, Colon, NumberToken) || (is(second, Equals) && !isMark(after, Equals))) mendEquals(work);
}
