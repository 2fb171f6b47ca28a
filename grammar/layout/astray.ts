import type { Span } from '../../src/text/span.js';
import { shown } from '../slip.js';
import { endOf, is, spanOf, type Token } from '../token.js';
import { Colon, Comma, Equals, Let, NumberToken, OpenBrace, Semicolon, Text, Use, Word } from '../tokens.js';
import { statementWords } from '../words.js';
import { closeBlock } from './block-end.js';
import { passSemicolon } from './finish-line.js';
import { readKnownStatement } from './statements.js';
import {
  afterComment,
  beginsItsLine,
  beginsStatement,
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
  type Work,
} from './work.js';

/** Reads what stands where an entry should, and is none; false of an entry. */
export function readAstray(work: Work, first: Token, open: OpenBlock): boolean {
  const found = ASTRAY.find(({ isHere }) => isHere(work, first, open));
  found?.read(work, first, open);
  return found !== undefined;
}

interface Astray {
  readonly isHere: (work: Work, first: Token, open: OpenBlock) => boolean;
  readonly read: (work: Work, first: Token, open: OpenBlock) => void;
}

/** What is found where an entry should begin; the first that is here is read. */
const ASTRAY: readonly Astray[] = [
  {
    isHere: (work, first) => is(first, OpenBrace) || (beginsStatement(work) && goesOnAfter(work)),
    read: readMisplaced,
  },
  { isHere: beginsStatement, read: (work, first, open) => closeBlock(work, open, first) },
  { isHere: (_, first) => is(first, Semicolon), read: passSemicolon },
  {
    isHere: (work, { image }) => BULLETS.has(image) && looksLikeEntry({ ...work, next: work.next + 1 }),
    read: passBullet,
  },
  { isHere: (_, first) => !is(first, Word), read: passNoWord },
  {
    isHere: (work, { image }) =>
      image === 'like' && is(peek(work, is(peek(work, 1), Colon, Equals) ? 2 : 1), Word),
    read: readLikeInBlock,
  },
  {
    isHere: (work, _, { type }) => type === 'batch' && is(peek(work, 1), NumberToken),
    read: passItemAstray,
  },
];

/** Passes what is left of a line, and those lines that go on with a list of envelopes and their numbers. */
function passItems(work: Work): void {
  do passLine(work);
  while (is(peek(work, -1), Comma) && passLineEnds(work) && is(peek(work, 1), NumberToken));
}

/** `tide-card 30` on a line of its own: the comma before it was left out, or `make:`. */
function passItemAstray(work: Work, first: Token): void {
  say(work, {
    message: `${shown(first)} begins an entry, and a number of envelopes belongs to \`make\``,
    at: spanOf(work.source, first),
    help: 'put a comma after the envelope before it, or write `make:` where it is the first',
  });
  passItems(work);
}

/** What some put before each line of a list. */
const BULLETS: ReadonlySet<string> = new Set(['-', '*', '•', '–', '—', '·']);

function passBullet(work: Work, first: Token): void {
  const { source } = work;
  const after = peek(work, 1) as Token;
  say(work, {
    message: `an entry begins with its name, not with ${shown(first)}`,
    at: spanOf(source, first),
    help: 'take it out',
    fix: [{ span: { source, start: first.startOffset, end: after.startOffset }, text: '' }],
  });
  work.next++;
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

function passNoWord(work: Work, first: Token): void {
  if (first.payload !== null) sayNotAnEntry(work, first);
  passItems(work);
}

function sayNotAnEntry(work: Work, first: Token): void {
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
