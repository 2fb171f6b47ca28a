import { shown } from '../slip.js';
import { absent, endOf, is, readAs, spanOf, type Token } from '../token.js';
import { CloseBrace, Eol, Semicolon } from '../tokens.js';
import { closers } from '../words.js';
import { afterComment, type OpenBlock, peek, remove, say, type Work } from './work.js';

/** The `}` of the open block, or what is written for it on a line of its own; false where neither stands here. */
export function readBlockEnd(work: Work): boolean {
  const { source } = work;
  const first = peek(work) as Token;
  const last = peek(work, 1) === undefined || is(peek(work, 1), Eol);
  if (!is(first, CloseBrace)) {
    if (!last || !closers.has(first.image)) return false;
    const at = spanOf(source, first);
    say(work, {
      message: `a block ends with \`}\`, not with ${shown(first)}`,
      at,
      help: 'write `}`',
      fix: [{ span: at, text: '}' }],
    });
  }
  work.next++;
  work.tokens.push(readAs(CloseBrace, first));
  work.tokens.push(absent(Eol, endOf(work.tokens.at(-1) as Token)));
  work.open = null;
  if (!last) readAfterBlock(work);
  return true;
}

/** What follows on the line of a `}`. */
function readAfterBlock(work: Work): void {
  const after = peek(work) as Token;
  // One more brace is reported as what closes nothing.
  if (is(after, CloseBrace)) return;
  if (is(after, Semicolon)) {
    say(work, {
      message: 'nothing follows the `}` of a block',
      at: spanOf(work.source, after),
      ...remove(work, after),
    });
    work.next++;
    return;
  }
  const before = endOf(peek(work, -1) as Token);
  say(work, {
    message: 'a block ends its line',
    at: spanOf(work.source, after),
    help: `begin a new line before ${shown(after)}`,
    fix: [{ span: { source: work.source, start: before, end: after.startOffset }, text: '\n' }],
  });
}

/** A block left open ends before what follows it, or with the file; that is where its brace is missed. */
export function closeBlock(work: Work, open: OpenBlock, before?: Token): void {
  const { source } = work;
  const last = endOf(work.tokens.at(-1) as Token);
  const end = afterComment(work, last);
  const place = before ?? work.scanned.findLast((token) => !is(token, Eol)) ?? open.brace;
  say(work, {
    message: `${open.name} is not closed`,
    at: spanOf(source, place),
    label: before === undefined ? 'the file ends after this' : 'a `}` is missing before this',
    related: [{ span: spanOf(source, open.brace), text: 'it opens here' }],
    help:
      before === undefined
        ? 'write `}` on a line of its own at the end of the file'
        : `write \`}\` on a line of its own before ${shown(before)}`,
    fix: [{ span: { source, start: end, end }, text: '\n}' }],
  });
  work.tokens.push(absent(CloseBrace, last), absent(Eol, last));
  work.open = null;
}
