import { shown } from '../slip.js';
import { absent, endOf, is, spanOf, type Token } from '../token.js';
import { CloseBrace, Colon, Comma, Eol, OpenBrace, Semicolon, Word } from '../tokens.js';
import { readLine } from './line.js';
import {
  beginsStatement,
  looksLikeEntry,
  passBlock,
  passLineEnds,
  peek,
  remove,
  say,
  type Work,
} from './work.js';

/** The rest of the line and its end, which may stand lower after a comma. */
export function finishLine(work: Work): void {
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
