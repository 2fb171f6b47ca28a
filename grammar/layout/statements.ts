import type { TokenType } from 'chevrotain';
import { nearest } from '../../src/text/nearest.js';
import { shown } from '../slip.js';
import { absent, endOf, is, makeToken, readAs, spanOf, type Token } from '../token.js';
import { BlockType, CloseBrace, Eol, Let, Like, OpenBrace, Text, Units, Use, Word } from '../tokens.js';
import { statementWords } from '../words.js';
import { finishLine } from './finish-line.js';
import { mendEquals } from './marks.js';
import {
  blockName,
  looksLikeEntry,
  nextOnAnyLine,
  passBlock,
  passLine,
  passLineEnds,
  passStatement,
  peek,
  remove,
  restOfLine,
  say,
  spanOfAll,
  type Work,
} from './work.js';

/** A statement, as far as its line or its block's opening brace; what is none is reported and passed over. */
export function readStatement(work: Work): void {
  const first = peek(work) as Token;
  if (is(first, Word)) {
    const type = statementWords.get(first.image);
    // Of the words that begin a statement only `paper` is a property too.
    const property = looksLikeEntry(work) && (type === undefined || type === BlockType);
    if (property) passPropertyAstray(work, first);
    else if (type === undefined) readUnknownStatement(work, first);
    else readKnownStatement(work, first, type);
    return;
  }
  if (is(first, CloseBrace)) {
    if (!work.astray)
      say(work, {
        message: 'this `}` closes nothing',
        at: spanOf(work.source, first),
        ...remove(work, first),
      });
    work.next++;
    return;
  }
  if (is(first, OpenBrace)) {
    say(work, {
      message: 'a block begins with what it states',
      at: spanOf(work.source, first),
      help: 'write `envelope NAME {`, `style NAME {` or `paper NAME {`',
    });
    passBlock(work);
    return;
  }
  say(work, {
    message: `a statement cannot begin with ${shown(first)}`,
    at: spanOf(work.source, first),
    help: `begin the line with ${[...statementWords.keys()].map((word) => `\`${word}\``).join(', ')}`,
  });
  passLine(work);
}

export function readKnownStatement(work: Work, first: Token, type: TokenType): void {
  work.astray = false;
  work.statements++;
  work.next++;
  work.tokens.push(readAs(type, first));
  if (type === BlockType) {
    readHeader(work, first);
    return;
  }
  if (type === Units) mendUnits(work, first);
  if (type === Use) mendPath(work);
  if (type === Let) {
    checkName(work, peek(work));
    mendEquals(work);
  }
  finishLine(work);
}

function readUnknownStatement(work: Work, first: Token): void {
  work.astray = false;
  const near = nearest(first.image, statementWords.keys());
  const [meant, ...others] = near;
  const at = spanOf(work.source, first);
  say(work, {
    message: `no statement begins with \`${first.image}\``,
    at,
    help:
      meant === undefined
        ? `a statement is one of ${[...statementWords.keys()].map((word) => `\`${word}\``).join(', ')}`
        : `did you mean ${near.map((word) => `\`${word}\``).join(' or ')}?`,
    ...(meant === undefined || others.length > 0 ? {} : { fix: [{ span: at, text: meant }] }),
  });
  if (meant !== undefined)
    readKnownStatement(work, { ...first, image: meant }, statementWords.get(meant) as TokenType);
  else work.passed.push(passStatement(work));
}

function passPropertyAstray(work: Work, first: Token): void {
  if (!work.astray) {
    say(work, {
      message: `\`${first.image}\` stands outside any block`,
      at: spanOf(work.source, first),
      help: 'put it between the `{` and the `}` of the envelope, style or paper it belongs to',
    });
  }
  work.astray = true;
  passLine(work);
}

/** From the name to the opening brace; one left out is put in where the block's entries follow. */
function readHeader(work: Work, type: Token): void {
  const from = work.next;
  while (is(peek(work), Eol) === false && peek(work) !== undefined && !is(peek(work), OpenBrace, CloseBrace))
    work.next++;
  const header = work.scanned.slice(from, work.next);
  checkName(work, header[0]);
  if (is(header[1], Word) && header[1]?.image === 'like') header[1] = readAs(Like, header[1]);
  for (const token of header) work.tokens.push(token);
  const last = header.at(-1) ?? type;
  if (is(nextOnAnyLine(work), OpenBrace)) {
    passLineEnds(work);
    work.open = peek(work) as Token;
    work.tokens.push(work.open);
    work.next++;
    return;
  }
  const end = endOf(last);
  say(work, {
    message: `the block of ${blockName(type, header[0])} has no \`{\``,
    at: { source: work.source, start: end, end },
    help: 'write `{` at the end of this line, its entries on the lines below, and `}` after them',
  });
  const brace = absent(OpenBrace, end);
  work.tokens.push(brace);
  passLineEnds(work);
  if (peek(work) !== undefined && (is(peek(work), CloseBrace) || looksLikeEntry(work))) work.open = brace;
  else work.tokens.push(absent(CloseBrace, end), absent(Eol, end));
}

function mendUnits(work: Work, first: Token): void {
  if (work.statements > 1) {
    say(work, {
      message: '`units` is the first statement of its file',
      at: spanOf(work.source, first),
      help: 'move it to the top, or take it out if the file has one there',
    });
  }
  if (is(peek(work), Word)) return;
  const line = restOfLine(work);
  const unit = line.find((token) => is(token, Word, Text));
  const span = spanOfAll(work, line);
  if (unit === undefined || span === null) return;
  const text = is(unit, Text) ? String(unit.payload) : unit.image;
  say(work, {
    message: '`units` is followed by a bare word',
    at: span,
    help: `write \`units ${text}\``,
    fix: [{ span: { ...span, start: endOf(first) }, text: ` ${text}` }],
  });
  work.next += line.length;
  work.tokens.push(makeToken(Word, text, unit.startOffset));
}

function mendPath(work: Work): void {
  if (is(peek(work), Text)) return;
  const line = restOfLine(work);
  const span = spanOfAll(work, line);
  if (span === null) return;
  const path = work.source.text.slice(span.start, span.end).replace(/^["']|["']$/g, '');
  say(work, {
    message: 'the file that is used stands between quotes',
    at: span,
    help: `write \`use "${path}"\``,
    ...(/["\\]/.test(path) ? {} : { fix: [{ span, text: `"${path}"` }] }),
  });
  work.next += line.length;
  work.tokens.push(makeToken(Text, work.source.text.slice(span.start, span.end), span.start, path));
}

/** Declared names are lower case. */
function checkName(work: Work, name: Token | undefined): void {
  if (name === undefined || !is(name, Word) || name.image === name.image.toLowerCase()) return;
  say(work, {
    message: `the name \`${name.image}\` has capitals`,
    at: spanOf(work.source, name),
    why: 'declared names are lower case',
    help:
      name.image === 'X'
        ? 'choose a longer name, in lower case'
        : `write \`${name.image.toLowerCase()}\`, here and wherever it is named`,
  });
}
