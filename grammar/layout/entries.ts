import { shown } from '../slip.js';
import { absent, endOf, is, readAs, spanOf, type Token } from '../token.js';
import {
  BlockType,
  CloseBrace,
  Colon,
  Compare,
  Eol,
  Equals,
  Expect,
  Let,
  NumberToken,
  OpenBrace,
  Text,
  Use,
  Word,
} from '../tokens.js';
import { statementWords } from '../words.js';
import { finishLine } from './finish-line.js';
import { mendEquals, mendMark } from './marks.js';
import { readKnownStatement } from './statements.js';
import { beginsStatement, beginsValue, passLine, passStatement, peek, say, type Work } from './work.js';

/** An entry of the open block, or the block's end. */
export function readEntry(work: Work): void {
  const { source } = work;
  const open = work.open as Token;
  const first = peek(work) as Token;
  if (is(first, CloseBrace)) {
    work.next++;
    work.tokens.push(first);
    work.open = null;
    const after = peek(work);
    if (after !== undefined && !is(after, Eol)) {
      say(work, {
        message: 'a block ends its line',
        at: spanOf(source, after),
        help: `begin a new line before ${shown(after)}`,
      });
    }
    work.tokens.push(absent(Eol, endOf(first)));
    return;
  }
  if (is(first, OpenBrace) || (beginsStatement(work) && work.balanced)) {
    readMisplaced(work, first);
    return;
  }
  if (beginsStatement(work)) {
    closeBlock(work, open, first);
    return;
  }
  if (!is(first, Word)) {
    sayNotAnEntry(work, first);
    passLine(work);
    return;
  }
  work.next++;
  readEntryMark(work, first);
  finishLine(work);
}

/** A statement inside a block. One of a line is read all the same, so that what it names is known; a block is not. */
function readMisplaced(work: Work, first: Token): void {
  const { source, open } = work;
  const type = statementWords.get(first.image);
  const block = type === undefined || type === BlockType;
  say(work, {
    message: block ? 'a block cannot stand inside a block' : `\`${first.image}\` cannot stand inside a block`,
    at: spanOf(source, first),
    related: [{ span: spanOf(source, open as Token), text: 'the block around it' }],
    help: 'move it out, before or after the block around it',
  });
  if (type === Let || type === Use) {
    const apart = { ...work, tokens: work.moved };
    readKnownStatement(apart, first, type);
    work.next = apart.next;
  } else work.passed.push(passStatement(work));
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

/** The property's name and its colon, or `expect`. */
function readEntryMark(work: Work, first: Token): void {
  const { source, tokens } = work;
  const mark = peek(work);
  if (first.image === 'expect' && !is(mark, Colon)) {
    tokens.push(readAs(Expect, first));
    if (is(peek(work, 1), Colon, NumberToken)) mendEquals(work);
    return;
  }
  const name = joinedName(work, first) ?? first;
  const after = peek(work);
  if (is(after, Compare)) {
    const at = spanOf(source, first);
    say(work, {
      message: `what \`${name.image}\` must come to is stated by an \`expect\``,
      at,
      help: `write \`expect ${name.image} ${after?.image} …\``,
      fix: [{ span: { ...at, end: at.start }, text: 'expect ' }],
    });
    tokens.push(absent(Expect, first.startOffset), name);
    return;
  }
  tokens.push(name);
  if (is(after, Colon)) return;
  if (is(after, Equals) || beginsValue(after)) tokens.push(mendMark(work, name, Colon, ':'));
}

/** `side mark:` and `side_mark:` for `side-mark:`. */
function joinedName(work: Work, first: Token): Token | null {
  const second = peek(work, peek(work)?.image === '_' ? 1 : 0);
  const reach = peek(work)?.image === '_' ? 2 : 1;
  if (!is(second, Word) || second === undefined || !is(peek(work, reach), Colon)) return null;
  const at = spanOf(work.source, first, second);
  const image = `${first.image}-${second.image}`;
  say(work, {
    message: 'a name of several words is joined by hyphens',
    at,
    help: `write \`${image}\``,
    fix: [{ span: at, text: image }],
  });
  work.next += reach;
  return { ...first, image };
}

/** A block left open ends before what follows it. */
export function closeBlock(work: Work, open: Token, before?: Token): void {
  const { source } = work;
  const last = endOf(work.tokens.at(-1) as Token);
  say(work, {
    message: 'this block is not closed',
    at: spanOf(source, open),
    ...(before === undefined
      ? { help: 'write `}` on a line of its own at the end of the file' }
      : {
          related: [{ span: spanOf(source, before), text: 'it is still open here' }],
          help: `write \`}\` on a line of its own before \`${before.image}\``,
        }),
    fix: [{ span: { source, start: last, end: last }, text: '\n}' }],
  });
  work.tokens.push(absent(CloseBrace, last), absent(Eol, last));
  work.open = null;
}
