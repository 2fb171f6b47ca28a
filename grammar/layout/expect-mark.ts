import { nearest } from '../../src/text/nearest.js';
import { shown } from '../slip.js';
import { endOf, is, readAs, spanOf, type Token } from '../token.js';
import { Colon, Compare, Equals, Expect, NumberToken, Post, Word } from '../tokens.js';
import { comparisonWords } from '../words.js';
import { joinedName } from './joined-name.js';
import { isMark, mendMark } from './marks.js';
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
  if (!readPost(work)) mendComparison(work);
  return true;
}

/** `post` and a class; a sign between them is one too many. */
function readPost(work: Work): boolean {
  const post = peek(work) as Token | undefined;
  if (post?.image !== 'post') return false;
  const sign = is(peek(work, 1), Colon, Equals) ? (peek(work, 1) as Token) : null;
  if (!is(peek(work, sign ? 2 : 1), Word)) return false;
  if (sign) {
    const { source } = work;
    say(work, {
      message: `no ${shown(sign)} follows \`expect post\``,
      at: spanOf(source, sign),
      help: 'write the class of post right after it',
      fix: [{ span: spanOf(source, sign), text: '' }],
    });
  }
  work.tokens.push(readAs(Post, post));
  work.next += sign ? 2 : 1;
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

/** The name, and the sign that words, a colon or nothing at all stand for. */
function mendComparison(work: Work): void {
  const first = peek(work);
  if (first === undefined || !is(first, Word)) return;
  work.next++;
  const compares = (ahead: number): boolean =>
    is(peek(work, ahead), Compare, Equals) || spokenSign(work, ahead) !== null;
  const name = joinedName(work, first, 3, compares) ?? first;
  work.tokens.push(name);
  const spoken = spokenSign(work, 0);
  if (spoken !== null) mendSpoken(work, spoken);
  else if (is(peek(work), Colon, NumberToken) || (is(peek(work), Equals) && !isMark(work, Equals)))
    work.tokens.push(mendMark(work, name, Equals, '='));
}

/** Words for a sign. */
interface Spoken {
  readonly words: readonly [Token, ...Token[]];
  readonly sign: string;
}

/** `is more than`: as many words as make a comparison that a value follows. */
function spokenSign({ scanned, next }: Work, ahead: number): Spoken | null {
  const [first, ...others] = scanned.slice(next + ahead, next + ahead + mostWords);
  if (first === undefined || !is(first, Word)) return null;
  for (let count = others.length; count >= 0; count--) {
    const words = [first, ...others.slice(0, count)] as const;
    const sign = signOf(said(words));
    if (sign !== undefined && beginsValue(scanned[next + ahead + count + 1])) return { words, sign };
  }
  return null;
}

/** `must be no more than` */
const mostWords = 5;

const said = (words: readonly Token[]): string => words.map(({ image }) => image.toLowerCase()).join(' ');

const signOf = (words: string): string | undefined =>
  comparisonWords.get(words) ?? comparisonWords.get(words.replace(/^(?:is|must be) /, ''));

function mendSpoken(work: Work, { words, sign }: Spoken): void {
  const [first] = words;
  const last = words.at(-1) ?? first;
  const at = spanOf(work.source, first, last);
  say(work, {
    message: `an \`expect\` compares by a sign, not by \`${said(words)}\``,
    at,
    help: `write \`${sign}\``,
    fix: [{ span: at, text: sign }],
  });
  work.tokens.push({ ...readAs(sign === '=' ? Equals : Compare, first, sign), end: endOf(last) });
  work.next += words.length;
}
