import type { Span } from '../../src/text/span.js';
import { shown } from '../slip.js';
import { absent, endOf, is, readAs, spanOf, type Token } from '../token.js';
import {
  Colon,
  Comma,
  Compare,
  Equals,
  Expect,
  Let,
  NumberToken,
  OpenBrace,
  Section,
  Semicolon,
  Text,
  Use,
  Word,
} from '../tokens.js';
import { askedOnly, statementWords } from '../words.js';
import { closeBlock, readBlockEnd } from './block-end.js';
import { readExpectMark } from './expect-mark.js';
import { finishLine, passSemicolon } from './finish-line.js';
import { joinedName } from './joined-name.js';
import { isMark, isOtherMark, mendMark, restOfEntry } from './marks.js';
import { readKnownStatement } from './statements.js';
import {
  afterComment,
  beginsItsLine,
  beginsStatement,
  beginsValue,
  goesOnAfter,
  isBlock,
  looksLikeEntry,
  type OpenBlock,
  passLine,
  passLineEnds,
  passStatement,
  peek,
  restOfLine,
  say,
  spanOfAll,
  type Work,
} from './work.js';

/** An entry of the open block, or the block's end. */
export function readEntry(work: Work): void {
  const open = work.open as OpenBlock;
  if (readBlockEnd(work)) return;
  const first = peek(work) as Token;
  if (is(first, OpenBrace) || (beginsStatement(work) && goesOnAfter(work))) {
    readMisplaced(work, first, open);
    return;
  }
  if (beginsStatement(work)) {
    closeBlock(work, open, first);
    return;
  }
  if (is(first, Semicolon)) {
    passSemicolon(work, first);
    return;
  }
  if (bullets.has(first.image) && looksLikeEntry({ ...work, next: work.next + 1 })) {
    sayBullet(work, first);
    work.next++;
    return;
  }
  if (!is(first, Word)) {
    sayNotAnEntry(work, first);
    passItems(work);
    return;
  }
  if (first.image === 'like' && is(peek(work, is(peek(work, 1), Colon, Equals) ? 2 : 1), Word)) {
    readLikeInBlock(work, first, open);
    return;
  }
  work.next++;
  if (
    first.image === 'section' &&
    (is(peek(work), Text) || open.type === 'catalogue') &&
    !is(peek(work), Colon)
  ) {
    readSection(work, first);
    return;
  }
  if (open.type === 'batch' && is(peek(work), NumberToken)) {
    sayItemAstray(work, first);
    passItems(work);
    return;
  }
  readEntryMark(work, first);
  finishLine(work);
}

/** Passes what is left of a line, and those lines that go on with a list of envelopes and their numbers. */
function passItems(work: Work): void {
  do passLine(work);
  while (is(peek(work, -1), Comma) && passLineEnds(work) && is(peek(work, 1), NumberToken));
}

/** `tide-card 30` on a line of its own: the comma before it was left out, or `make:`. */
function sayItemAstray(work: Work, first: Token): void {
  say(work, {
    message: `${shown(first)} begins an entry, and a number of envelopes belongs to \`make\``,
    at: spanOf(work.source, first),
    help: 'put a comma after the envelope before it, or write `make:` where it is the first',
  });
}

/** What some put before each line of a list. */
const bullets: ReadonlySet<string> = new Set(['-', '*', '•', '–', '—', '·']);

function sayBullet(work: Work, first: Token): void {
  const { source } = work;
  const after = peek(work, 1) as Token;
  say(work, {
    message: `an entry begins with its name, not with ${shown(first)}`,
    at: spanOf(source, first),
    help: 'take it out',
    fix: [{ span: { source, start: first.startOffset, end: after.startOffset }, text: '' }],
  });
}

/** `like house` on a line of its own. */
function readLikeInBlock(work: Work, first: Token, open: OpenBlock): void {
  const { source } = work;
  const line = restOfLine(work);
  const marked = is(line[1], Colon, Equals);
  const parent = line[marked ? 2 : 1] as Token;
  const whole = line.length === (marked ? 3 : 2) && open.likeAt !== null && beginsItsLine(work);
  const text = `like ${parent.image}`;
  const at = { source, start: open.likeAt ?? 0, end: open.likeAt ?? 0 };
  say(work, {
    message: `what ${open.name} is like stands in its first line, before the \`{\``,
    at: spanOf(source, first),
    related: [{ span: spanOf(source, open.brace), text: 'before this' }],
    help: `take the line out, and write \`${text}\` there`,
    ...(whole
      ? {
          fix: [
            { span: at, text: ` ${text}` },
            { span: lineOf(work, parent), text: '' },
          ],
        }
      : {}),
  });
  passLine(work);
}

/** The line that begins here, up to its last token, with the line end before it; a comment behind it keeps that. */
function lineOf(work: Work, last: Token): Span {
  const before = peek(work, -1) as Token;
  const end = endOf(last);
  const isCommented = afterComment(work, end) > end;
  return { source: work.source, start: isCommented ? endOf(before) : before.startOffset, end };
}

/** A statement inside a block. One of a line is read all the same, so that what it names is known; a block is not. */
function readMisplaced(work: Work, first: Token, open: OpenBlock): void {
  const { source } = work;
  const type = statementWords.get(first.image);
  const block = type === undefined || isBlock(type);
  say(work, {
    message: block ? 'a block cannot stand inside a block' : `\`${first.image}\` cannot stand inside a block`,
    at: spanOf(source, first),
    related: [{ span: spanOf(source, open.brace), text: 'the block around it' }],
    help: 'move it out, before or after the block around it',
  });
  if (type === Let || type === Use) {
    const apart = { ...work, tokens: work.moved };
    readKnownStatement(apart, first, type);
    work.next = apart.next;
  } else work.passed.push(passStatement(work));
}

function sayNotAnEntry(work: Work, first: Token): void {
  if (first.payload === null) return;
  const quoted = is(first, Text) && is(peek(work, 1), Colon) ? String(first.payload) : null;
  const at = spanOf(work.source, first);
  say(work, {
    message: `an entry cannot begin with ${shown(first)}`,
    at,
    help:
      quoted === null
        ? 'begin with the name of a property, and a colon'
        : `write \`${quoted}:\`, without quotes`,
    ...(quoted !== null && /^[a-z][a-z0-9-]*$/.test(quoted) ? { fix: [{ span: at, text: quoted }] } : {}),
  });
}

/** `section "Title":`, then what it takes. */
function readSection(work: Work, first: Token): void {
  const title = peek(work);
  if (!is(title, Text)) {
    const words = restOfLine(work);
    const end = words.findIndex((token) => is(token, Colon));
    const named = spanOfAll(work, end < 0 ? words.slice(0, 1) : words.slice(0, end));
    const written = named === null ? 'Title' : work.source.text.slice(named.start, named.end);
    say(work, {
      message: 'a section begins with its title, between quotes',
      at: named ?? spanOf(work.source, first),
      help: `write \`section "${written}": \`, then names of envelopes, or \`tagged\` and a tag`,
    });
    passLine(work);
    return;
  }
  work.tokens.push(readAs(Section, first), title as Token);
  work.next++;
  if (!isMark(work, Colon)) {
    const after = peek(work);
    if (isOtherMark(work) || beginsValue(after)) work.tokens.push(mendMark(work, title as Token, Colon, ':'));
  }
  finishLine(work);
}

/** The property's name and its colon, or `expect`. */
function readEntryMark(work: Work, first: Token): void {
  const { tokens } = work;
  if (readExpectMark(work, first)) return;
  const name = joinedName(work, first, 2, (ahead) => is(peek(work, ahead), Colon, Equals)) ?? first;
  const after = peek(work);
  if (is(after, Compare) || (is(after, Equals) && askedOnly.has(name.image))) {
    sayExpect(work, name, after as Token);
    tokens.push(absent(Expect, first.startOffset), name);
    return;
  }
  tokens.push(name);
  if (isMark(work, Colon)) return;
  if (isOtherMark(work) || beginsValue(after)) tokens.push(mendMark(work, name, Colon, ':'));
}

function sayExpect(work: Work, name: Token, sign: Token): void {
  if (sign.payload === null) return;
  const { source } = work;
  const span = spanOfAll(work, restOfEntry(work, 1));
  const value = span === null ? 'VALUE' : source.text.slice(span.start, span.end);
  const at = spanOf(source, name);
  say(work, {
    message: `what \`${name.image}\` must come to is stated by an \`expect\``,
    at,
    help: `write \`expect ${name.image} ${sign.image} ${value}\``,
    fix: [{ span: { ...at, end: at.start }, text: 'expect ' }],
  });
}
