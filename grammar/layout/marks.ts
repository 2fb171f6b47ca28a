import type { TokenType } from 'chevrotain';
import { absent, endOf, is, readAs, spanOf, type Token } from '../token.js';
import { CloseBrace, Colon, Eol, Equals, Expect, Let, Minus, Semicolon, Word } from '../tokens.js';
import { beginsValue, peek, say, spanOfAll, type Work } from './work.js';

/** `NAME = …` written with another mark, or with nothing. */
export function mendEquals(work: Work, name = peek(work)): void {
  if (name === undefined || !is(name, Word)) return;
  const after = { ...work, next: work.next + 1 };
  work.next++;
  work.tokens.push(name);
  if (isMark(after, Equals) || !(isOtherMark(after) || beginsValue(peek(after)))) return;
  work.tokens.push(mendMark(work, name, Equals, '='));
}

/** Whether that very mark stands here, and no other touches it. */
export const isMark = (work: Work, type: TokenType): boolean =>
  is(peek(work), type) && marksHere(work).length === 1;

/** `:` or `=`, both (`:=`), a `-` that stands apart, or a word that says the same. */
export const isOtherMark = (work: Work): boolean => marksHere(work).length > 0;

/** `card is A6` */
const verbs: ReadonlySet<string> = new Set(['is', 'are']);

function marksHere(work: Work): readonly Token[] {
  const first = peek(work);
  const second = peek(work, 1);
  if (first === undefined || second === undefined) return is(first, Colon, Equals) ? [first as Token] : [];
  if (is(first, Word) && verbs.has(first.image)) return beginsValue(second) ? [first] : [];
  if (is(first, Minus)) return endOf(first) < second.startOffset ? [first] : [];
  if (!is(first, Colon, Equals)) return [];
  const both = is(second, Colon, Equals) && endOf(first) === second.startOffset;
  return both ? [first, second] : [first];
}

/** The mark that ought to stand after a name: put in, or put in the place of another. */
export function mendMark(work: Work, name: Token, type: TokenType, mark: string): Token {
  const { source } = work;
  const there = marksHere(work);
  const [first] = there;
  const span = spanOfAll(work, restOfEntry(work, there.length));
  const joined = mark === '=' ? ' =' : mark;
  const last = there.at(-1) ?? name;
  const end = endOf(last);
  const at = first === undefined ? spanOf(source, name) : spanOf(source, first, last);
  const lead = leadOf(work);
  const spaced = span === null || span.start > end ? joined : `${joined} `;
  say(work, {
    message:
      first === undefined
        ? `\`${lead}${name.image}\` has no \`${mark}\` before its value`
        : `\`${lead}${name.image}\` takes \`${mark}\` before its value, not \`${source.text.slice(at.start, at.end)}\``,
    at,
    help: `write \`${lead}${name.image}${joined} ${span === null ? 'VALUE' : source.text.slice(span.start, span.end)}\``,
    fix: [{ span: { source, start: endOf(name), end }, text: spaced }],
  });
  if (first === undefined) return absent(type, endOf(name));
  work.next += there.length;
  return readAs(type, first, undefined);
}

/** The word that stands before the name, of an `expect` or a `let`. */
function leadOf({ tokens }: Work): string {
  const [before, last] = tokens.slice(-2);
  if (is(before, Expect) || is(last, Expect)) return 'expect ';
  return is(before, Let) || is(last, Let) ? 'let ' : '';
}

/** What stands from there to the end of the entry, as far as a message would show it. */
export function restOfEntry(work: Work, from: number): readonly Token[] {
  const value = work.scanned.slice(work.next + from, work.next + from + 30);
  const end = value.findIndex((token) => is(token, Eol, CloseBrace, Semicolon));
  return end < 0 ? value : value.slice(0, end);
}
