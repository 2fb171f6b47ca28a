import type { TokenType } from 'chevrotain';
import type { Diagnostic } from '../src/diagnostics/diagnostic.js';
import { nearest } from '../src/text/nearest.js';
import type { Source } from '../src/text/source.js';
import type { Span } from '../src/text/span.js';
import { readLine } from './line.js';
import { absent, endOf, is, makeToken, readAs, spanOf, type Token } from './token.js';
import {
  BlockType,
  CloseBrace,
  Colon,
  Comma,
  Compare,
  Eol,
  Equals,
  Expect,
  Let,
  Like,
  NumberToken,
  OpenBrace,
  Semicolon,
  Text,
  Units,
  Use,
  Word,
} from './tokens.js';
import { statementWords } from './words.js';
import {
  beginsStatement,
  beginsValue,
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
  shown,
  spanOfAll,
  type Work,
} from './work.js';

export interface Layout {
  readonly tokens: Token[];
  readonly diagnostics: readonly Diagnostic[];
  /** What was not read at all, after its one finding. */
  readonly passed: readonly Span[];
}

/**
 * Lines and blocks: what the parser is handed is a run of statements, each closed by one line end; a block holds
 * entries, each closed by one line end. Line ends after a comma and about braces are taken out or put in, words that begin
 * a line become what they mean there, and braces are paired; what had to be mended is reported.
 */
export function layOut(source: Source, scanned: readonly Token[]): Layout {
  const work: Work = {
    source,
    scanned,
    next: 0,
    tokens: [],
    diagnostics: [],
    open: null,
    balanced:
      scanned.filter((token) => is(token, OpenBrace)).length ===
      scanned.filter((token) => is(token, CloseBrace)).length,
    statements: 0,
    astray: false,
    passed: [],
  };
  while (passLineEnds(work)) {
    if (work.open === null) readStatement(work);
    else readEntry(work);
  }
  if (work.open !== null) closeBlock(work, work.open);
  return { tokens: work.tokens, diagnostics: work.diagnostics, passed: work.passed };
}

// Statements

function readStatement(work: Work): void {
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

function readKnownStatement(work: Work, first: Token, type: TokenType): void {
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

/** `NAME = …` written with a colon, or with nothing. */
function mendEquals(work: Work): void {
  const name = peek(work);
  const mark = peek(work, 1);
  if (name === undefined || !is(name, Word) || !(is(mark, Colon) || beginsValue(mark))) return;
  work.next++;
  work.tokens.push(name, mendMark(work, name, Equals, '='));
}

// Entries

function readEntry(work: Work): void {
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
  const begins = beginsStatement(work);
  if (is(first, OpenBrace) || (begins && work.balanced && statementWords.get(first.image) === BlockType)) {
    say(work, {
      message: 'a block cannot stand inside a block',
      at: spanOf(source, first),
      related: [{ span: spanOf(source, open), text: 'the block around it' }],
      help: 'move it out, before or after the block around it',
    });
    work.passed.push(passStatement(work));
    return;
  }
  if (begins) {
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

// Lines

/** The rest of the line and its end, which may stand lower after a comma. */
function finishLine(work: Work): void {
  const line: Token[] = [];
  for (let token = peek(work); token !== undefined; token = peek(work)) {
    const last = line.at(-1);
    if (is(token, Eol)) {
      if (!is(last, Comma)) break;
      passLineEnds(work);
      if (
        peek(work) !== undefined &&
        !is(peek(work), CloseBrace) &&
        !looksLikeEntry(work) &&
        !beginsStatement(work)
      )
        continue;
      break;
    }
    if (is(token, CloseBrace) && work.open !== null) break;
    if (is(token, Semicolon)) {
      saySemicolon(work, token);
      work.next++;
      break;
    }
    if (line.length > 0 && beginsAnother(work)) {
      sayTwoOnOneLine(work, line.at(-1) as Token, token);
      break;
    }
    line.push(token);
    if (is(token, OpenBrace)) passBlock(work);
    else work.next++;
  }
  const comma = line.at(-1);
  if (is(comma, Comma) && comma !== undefined) {
    line.pop();
    say(work, {
      message: 'a list ends in a comma, and nothing follows it',
      at: spanOf(work.source, comma),
      ...remove(work, comma),
    });
  }
  const read = readLine(work.source, work.tokens.at(-1) as Token, line);
  for (const token of read.tokens) work.tokens.push(token);
  for (const finding of read.diagnostics) work.diagnostics.push(finding);
  const reported = is(comma, Comma) && line.length === 0 ? null : undefined;
  work.tokens.push(absent(Eol, endOf(work.tokens.at(-1) as Token), reported));
}

/** Whether an entry or a statement begins here, in the middle of a line. */
function beginsAnother(work: Work): boolean {
  if (!is(peek(work), Word)) return false;
  if (beginsStatement(work)) return true;
  if (work.open === null) return false;
  return is(peek(work, 1), Colon) || (peek(work)?.image === 'expect' && is(peek(work, 1), Word));
}

function sayTwoOnOneLine(work: Work, before: Token, token: Token): void {
  const { source } = work;
  const indent = work.open === null ? '' : '  ';
  say(work, {
    message: `two on one line: ${shown(token)} begins a line of its own`,
    at: spanOf(source, token),
    help: `begin a new line before ${shown(token)}`,
    fix: [{ span: { source, start: endOf(before), end: token.startOffset }, text: `\n${indent}` }],
  });
}

function saySemicolon(work: Work, token: Token): void {
  const after = peek(work, 1);
  const ends = after === undefined || is(after, Eol, CloseBrace);
  say(work, {
    message: 'it is the end of the line that ends an entry or a statement, not `;`',
    at: spanOf(work.source, token),
    ...(ends ? remove(work, token) : { help: `begin a new line before ${shown(after)}` }),
  });
}

/** The mark that ought to stand after a name: put in, or put in the place of another. */
function mendMark(work: Work, name: Token, type: TokenType, mark: string): Token {
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

/** A block left open ends before what follows it. */
function closeBlock(work: Work, open: Token, before?: Token): void {
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
