import { nearest } from '../../src/text/nearest.js';
import { either } from '../slip.js';
import { absent, endOf, is, meantAs, spanOf, type Token } from '../token.js';
import { Eol, OpenBrace, Units, Word } from '../tokens.js';
import { fileUnits, otherStatementWords, statementWords } from '../words.js';
import { finishLine } from './finish-line.js';
import { peek, restOfLine, say, type Work } from './work.js';

export const listOfStatements = [...statementWords.keys()].map((word) => `\`${word}\``).join(', ');

/** `mm`, alone on the file's first line: the `units` are meant, and read. */
export function readBareUnit(work: Work, first: Token): boolean {
  const unit = fileUnits.get(first.image);
  const alone = peek(work, 1) === undefined || is(peek(work, 1), Eol);
  if (unit === undefined || work.statements > 0 || !alone) return false;
  const at = spanOf(work.source, first);
  say(work, {
    message: `\`units\` is missing before \`${first.image}\``,
    at,
    help: `write \`units ${unit}\``,
    fix: [{ span: at, text: `units ${unit}` }],
  });
  work.statements++;
  work.next++;
  work.tokens.push(absent(Units, first.startOffset), meantAs(Word, first, unit));
  finishLine(work);
  return true;
}

/** Reports a word that begins no statement; the word that was surely meant, or null. */
export function meantStatement(work: Work, first: Token): string | null {
  const lower = first.image.toLowerCase();
  const at = spanOf(work.source, first);
  if (statementWords.has(lower)) {
    say(work, {
      message: `\`${lower}\` is written in small letters`,
      at,
      help: `write \`${lower}\``,
      fix: [{ span: at, text: lower }],
    });
    return lower;
  }
  const other = otherStatementWords.get(lower);
  if (other === undefined && sayNameAlone(work, first)) return null;
  const near = other === undefined ? nearest(first.image, statementWords.keys()) : [other];
  const [meant, ...others] = near;
  say(work, {
    message: `no statement begins with \`${first.image}\``,
    at,
    help:
      meant === undefined
        ? `a statement is one of ${listOfStatements}`
        : other === undefined
          ? `did you mean ${either(near)}?`
          : `write \`${other}\``,
    ...(meant === undefined || others.length > 0 ? {} : { fix: [{ span: at, text: meant }] }),
  });
  return meant ?? null;
}

/** `half-letter like house {`: a block that does not say what it is. */
function sayNameAlone(work: Work, first: Token): boolean {
  const line = restOfLine(work);
  const brace = line.findIndex((token) => is(token, OpenBrace));
  const header = brace === 1 || (brace === 3 && line[1]?.image === 'like');
  if (!header || nearest(first.image, statementWords.keys()).length > 0) return false;
  const { text } = work.source;
  const written = text.slice(first.startOffset, endOf(line[brace - 1] as Token));
  say(work, {
    message: `this block does not say what it is`,
    at: spanOf(work.source, first),
    help: `write \`envelope ${written} {\`, or \`style\` or \`paper\` before it`,
  });
  return true;
}
