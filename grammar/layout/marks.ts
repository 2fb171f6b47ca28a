import type { TokenType } from 'chevrotain';
import { absent, endOf, is, readAs, spanOf, type Token } from '../token.js';
import { CloseBrace, Colon, Eol, Equals, Semicolon, Word } from '../tokens.js';
import { beginsValue, peek, say, spanOfAll, type Work } from './work.js';

/** `NAME = …` written with a colon, or with nothing. */
export function mendEquals(work: Work): void {
  const name = peek(work);
  const mark = peek(work, 1);
  if (name === undefined || !is(name, Word) || !(is(mark, Colon) || beginsValue(mark))) return;
  work.next++;
  work.tokens.push(name, mendMark(work, name, Equals, '='));
}

/** The mark that ought to stand after a name: put in, or put in the place of another. */
export function mendMark(work: Work, name: Token, type: TokenType, mark: string): Token {
  const { source } = work;
  const there = is(peek(work), Colon, Equals) ? (peek(work) as Token) : null;
  const span = spanOfAll(work, nextValue(work, there === null ? 0 : 1));
  const joined = mark === '=' ? ' =' : mark;
  const end = there === null ? endOf(name) : endOf(there);
  say(work, {
    message:
      there === null
        ? `\`${name.image}\` has no \`${mark}\` before its value`
        : `\`${name.image}\` takes \`${mark}\` before its value, not \`${there.image}\``,
    at: spanOf(source, there ?? name),
    help: `write \`${name.image}${joined} ${span === null ? 'VALUE' : source.text.slice(span.start, span.end)}\``,
    fix: [{ span: { source, start: endOf(name), end }, text: joined }],
  });
  if (there === null) return absent(type, endOf(name));
  work.next++;
  return readAs(type, there);
}

/** What stands from there to the end of the entry, as far as a message would show it. */
function nextValue(work: Work, from: number): readonly Token[] {
  const value = work.scanned.slice(work.next + from, work.next + from + 30);
  const end = value.findIndex((token) => is(token, Eol, CloseBrace, Semicolon));
  return end < 0 ? value : value.slice(0, end);
}
