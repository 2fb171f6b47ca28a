import { shown } from '../slip.js';
import { absent, endOf, is, spanOf, type Token } from '../token.js';
import { CloseBrace, Colon, Comma, Eol, Equals, OpenBrace, Semicolon, Word } from '../tokens.js';
import { readLine } from './line.js';
import {
  beginsStatement,
  looksLikeEntry,
  passBlock,
  passLine,
  passLineEnds,
  peek,
  remove,
  say,
  type Work,
} from './work.js';

/** The rest of the line and its end, which may stand lower after a comma. */
export function finishLine(work: Work): void {
  const line: Token[] = [];
  let another = false;
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
      passSemicolon(work, token);
      break;
    }
    if (line.length > 0 && beginsAnother(work)) {
      sayTwoOnOneLine(work, line, token);
      another = true;
      break;
    }
    line.push(token);
    if (is(token, OpenBrace)) {
      if (!passBlock(work)) break;
    } else work.next++;
  }
  const comma = line.at(-1);
  if (is(comma, Comma) && comma !== undefined) {
    line.pop();
    if (!another)
      say(work, {
        message: 'a list ends in a comma, and nothing follows it',
        at: spanOf(work.source, comma),
        ...remove(work, comma),
      });
  }
  const read = readLine(work.source, work.tokens.at(-1) as Token, line);
  for (const token of read.tokens) work.tokens.push(token);
  for (const finding of read.diagnostics) work.diagnostics.push(finding);
  const alone = line.length === 0 || is(line.at(-1), Colon, Equals, Comma);
  const reported = is(comma, Comma) && alone ? null : undefined;
  work.tokens.push(absent(Eol, endOf(work.tokens.at(-1) as Token), reported));
}

/** Whether an entry or a statement begins here, in the middle of a line. */
function beginsAnother(work: Work): boolean {
  if (!is(peek(work), Word)) return false;
  if (beginsStatement(work)) return true;
  if (work.open === null) return false;
  return is(peek(work, 1), Colon) || (peek(work)?.image === 'expect' && is(peek(work, 1), Word));
}

function sayTwoOnOneLine(work: Work, line: readonly Token[], token: Token): void {
  const { source } = work;
  const indent = work.open === null ? '' : '  ';
  const before = line.at(is(line.at(-1), Comma) ? -2 : -1) ?? (work.tokens.at(-1) as Token);
  say(work, {
    message: `two on one line: ${shown(token)} begins a line of its own`,
    at: spanOf(source, token),
    help: `begin a new line before ${shown(token)}`,
    fix: [{ span: { source, start: endOf(before), end: token.startOffset }, text: `\n${indent}` }],
  });
}

/** A `;`: at the end of a line, between two entries, or before what reads like a comment or a list's item. */
export function passSemicolon(work: Work, token: Token): void {
  const { source } = work;
  const at = spanOf(source, token);
  const before = peek(work, -1);
  work.next++;
  const after = peek(work);
  if (after === undefined || is(after, Eol, CloseBrace)) {
    say(work, {
      message: 'it is the end of the line that ends an entry or a statement, not `;`',
      at,
      ...remove(work, token),
    });
  } else if (before === undefined || is(before, Eol)) {
    say(work, {
      message: 'a comment begins with `#`, not with `;`',
      at,
      help: 'write `#`',
      fix: [{ span: at, text: '#' }],
    });
    passLine(work);
  } else if (looksLikeEntry(work) || beginsStatement(work)) {
    const indent = work.open === null ? '' : '  ';
    say(work, {
      message: 'it is the end of the line that ends an entry or a statement, not `;`',
      at,
      help: `begin a new line before ${shown(after)}`,
      fix: [{ span: { source, start: endOf(before), end: after.startOffset }, text: `\n${indent}` }],
    });
  } else {
    say(work, {
      message: '`;` means nothing here',
      at,
      help: 'write `,` between the items of a list, and `#` before a comment',
    });
    passLine(work);
  }
}
