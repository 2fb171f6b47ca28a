import { shown } from '../slip.js';
import { absent, endOf, is, meantAs, readAs, spanOf, type Token } from '../token.js';
import {
  CloseBrace,
  Colon,
  Comma,
  Compare,
  Eol,
  Equals,
  Like,
  NumberToken,
  OpenBrace,
  Text,
  Word,
  X,
} from '../tokens.js';
import { likeWords, openers } from '../words.js';
import { blockName, looksLikeEntry, nextOnAnyLine, passLineEnds, peek, say, type Work } from './work.js';
import { meantName } from './name.js';

/** From the name to the opening brace; one left out is put in where the block's entries follow. */
export function readHeader(work: Work, type: Token): void {
  const from = work.next;
  while (peek(work) !== undefined && !is(peek(work), Eol, OpenBrace, CloseBrace)) work.next++;
  const written = work.scanned.slice(from, work.next);
  const opener = is(nextOnAnyLine(work), OpenBrace) ? null : openerOf(written);
  const said = opener === null ? written : written.slice(0, -1);
  const header = type.image === 'catalogue' ? nameless(work, said) : mendHeader(work, type, said);
  const [name, ...others] = header;
  const several = is(others[0], Word, NumberToken);
  if (name !== undefined) work.tokens.push(several ? name : meantName(work, name));
  for (const token of others) work.tokens.push(token);
  const brace = opener === null ? readBrace(work, type, header) : mendBrace(work, opener);
  work.tokens.push(brace.token);
  if (brace.opens) {
    const like = header.some((token) => is(token, Like));
    const last = header.at(-1) ?? type;
    work.open = {
      brace: brace.token,
      type: type.image,
      name: blockName(type, header[0]),
      likeAt: like || type.image === 'catalogue' ? null : endOf(last),
    };
  } else work.tokens.push(absent(CloseBrace, endOf(brace.token)), absent(Eol, endOf(brace.token)));
}

interface Brace {
  readonly token: Token;
  /** Entries, or the block's end, follow. */
  readonly opens: boolean;
}

function readBrace(work: Work, type: Token, header: readonly Token[]): Brace {
  if (is(nextOnAnyLine(work), OpenBrace)) {
    passLineEnds(work);
    const token = peek(work) as Token;
    work.next++;
    return { token, opens: true };
  }
  const end = endOf(work.scanned[work.next - 1] ?? type);
  const token = absent(OpenBrace, end);
  passLineEnds(work);
  const opens = peek(work) !== undefined && (is(peek(work), CloseBrace) || looksLikeEntry(work));
  say(work, {
    message: `the block of ${blockName(type, header[0])} has no \`{\``,
    at: { source: work.source, start: end, end },
    help: opens
      ? 'write `{` at the end of this line'
      : 'write `{` at the end of this line, its entries on the lines below, and `}` after them',
    ...(opens ? { fix: [{ span: { source: work.source, start: end, end }, text: ' {' }] } : {}),
  });
  return { token, opens };
}

/** A word or a bracket at the end of the header that opens a block elsewhere. */
function openerOf(header: readonly Token[]): Token | null {
  const last = header.at(-1);
  return last !== undefined && header.length > 1 && openers.has(last.image) ? last : null;
}

function mendBrace(work: Work, opener: Token): Brace {
  const at = spanOf(work.source, opener);
  const touches = work.source.text[at.start - 1] !== ' ';
  say(work, {
    message: `a block opens with \`{\`, not with ${shown(opener)}`,
    at,
    help: 'write `{`, and `}` where the block ends',
    fix: [{ span: at, text: touches ? ' {' : '{' }],
  });
  return { token: readAs(OpenBrace, opener), opens: true };
}

/** A catalogue has no name, and is like no other. */
function nameless(work: Work, written: readonly Token[]): readonly Token[] {
  const [first] = written;
  if (first === undefined) return [];
  const at = spanOf(work.source, first, written.at(-1));
  say(work, {
    message: 'a catalogue has no name: there is one for all envelopes of its folder',
    at,
    help: 'write `catalogue {`',
    fix: [{ span: at, text: '' }],
  });
  return [];
}

/** NAME, or NAME `like` OTHER: what was written for it, as it was meant. */
function mendHeader(work: Work, type: Token, written: readonly Token[]): readonly Token[] {
  const [name, ...others] = is(written[0], Colon, Equals) ? dropMark(work, type, written) : written;
  if (name === undefined) return [];
  if (is(others[0], Colon, Equals) && others.length === 1) {
    dropMark(work, name, others);
    return [name];
  }
  const relation = relationOf(others);
  if (relation === null) return [name, ...others.map(asLike)];
  const [first, ...parents] = others as [Token, ...Token[]];
  const like = relation === 'like' ? first : mendLike(work, first);
  const [parent, ...more] = is(parents[0], Colon, Equals) ? dropMark(work, first, parents) : parents;
  if (parent === undefined) return [name, readAs(Like, like)];
  if (isTorn(parent, more) || isOfSeveralWords(parent, more))
    return [name, readAs(Like, like), parent, ...more];
  if (more.length > 0) sayOneLike(work, more);
  return [name, readAs(Like, like), bareWord(work, parent)];
}

/** The word `like` after what is no name: the name ends there all the same. */
const asLike = (token: Token, index: number, { length }: readonly Token[]): Token =>
  is(token, Word) && token.image === 'like' && index < length - 1 ? readAs(Like, token) : token;

/** Whether what follows a name says what the block is like, by that word or another. */
function relationOf([first, second]: readonly Token[]): 'like' | 'other' | null {
  if (first === undefined) return null;
  if (is(first, Word) && first.image === 'like') return 'like';
  if (!is(second, Word, Text)) return null;
  if (is(first, Colon, Equals, Compare)) return 'other';
  return is(first, Word) && likeWords.has(first.image.toLowerCase()) ? 'other' : null;
}

/** Whether a name is one only up to some character in it. */
const isTorn = (name: Token, [next]: readonly Token[]): boolean =>
  next?.startOffset === endOf(name) && !is(next, Comma);

/** Whether a name has words side by side, and no word or mark that lists them. */
const isOfSeveralWords = (name: Token, more: readonly Token[]): boolean =>
  is(name, Word) &&
  more.length > 0 &&
  more.every((token) => is(token, Word, NumberToken, X) && !LISTING.has(token.image));

const LISTING: ReadonlySet<string> = new Set(['and', 'or', 'like', 'plus', 'then', 'with']);

function mendLike(work: Work, first: Token): Token {
  const at = spanOf(work.source, first);
  const touches = work.source.text[at.start - 1] !== ' ';
  say(work, {
    message: `what a block is like is said by \`like\`, not by ${shown(first)}`,
    at,
    help: 'write `like`',
    fix: [{ span: at, text: touches ? ' like' : 'like' }],
  });
  return first;
}

/** A mark that stands where only a space does: passed over. */
function dropMark(work: Work, before: Token, tokens: readonly Token[]): readonly Token[] {
  const [mark, ...others] = tokens as [Token, ...Token[]];
  const at = spanOf(work.source, mark);
  say(work, {
    message: `no ${shown(mark)} follows ${shown(before)} here`,
    at,
    help: 'take it out; a space is enough',
    fix: [{ span: at, text: work.source.text[at.end] === ' ' ? '' : ' ' }],
  });
  return others;
}

function sayOneLike(work: Work, more: readonly Token[]): void {
  say(work, {
    message: 'a block is like one other, and no more',
    at: spanOf(work.source, more[0] as Token, more.at(-1)),
    help: 'name one, and let that one be like the other in turn',
  });
}

/** A name between quotes, without them. */
function bareWord(work: Work, token: Token): Token {
  if (!is(token, Text) || !/^[a-z][a-z0-9-]*$/.test(String(token.payload))) return token;
  const text = String(token.payload);
  const at = spanOf(work.source, token);
  say(work, {
    message: 'a name stands without quotes',
    at,
    help: `write \`${text}\``,
    fix: [{ span: at, text }],
  });
  return meantAs(Word, token, text);
}
