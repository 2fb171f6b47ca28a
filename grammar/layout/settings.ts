import { recipePath } from '../../src/syntax/recipe-path.js';
import { is, makeToken, meantAs, spanOf, type Token } from '../token.js';
import { Colon, Comma, Equals, Stray, Text, Word } from '../tokens.js';
import { fileUnits } from '../words.js';
import { peek, restOfLine, say, spanOfAll, type Work } from './work.js';

/** What follows `units`, as the bare word that it ought to be. */
export function mendUnits(work: Work, first: Token): void {
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
  const written = is(unit, Text) ? String(unit.payload) : unit.image;
  const text = fileUnits.get(written) ?? written;
  say(work, {
    message: '`units` is followed by a bare word',
    at: span,
    help: `write \`units ${text}\``,
    fix: [{ span: { ...span, start: first.startOffset }, text: `units ${text}` }],
  });
  work.next += line.length;
  work.tokens.push(meantAs(Word, unit, text));
}

/** What follows `use`, as the string that it ought to be. */
export function mendPath(work: Work): void {
  if (is(peek(work), Text)) return;
  if (is(peek(work), Colon, Equals) && is(peek(work, 1), Text)) {
    dropMark(work, peek(work) as Token);
    return;
  }
  const line = restOfLine(work);
  const span = spanOfAll(work, line);
  if (span === null || line.some((token) => is(token, Text, Comma))) return;
  const written = work.source.text.slice(span.start, span.end);
  const bare = written.replace(/^[:=]?\s*["']?|["']$/g, '');
  const path = /\.[a-z]+$/i.test(bare) ? bare : recipePath(bare);
  const sure =
    path !== null && !/["\\]/.test(path) && !line.some((token) => is(token, Stray) && token.payload === null);
  say(work, {
    message: 'the file that is used stands between quotes',
    at: span,
    help:
      path === null
        ? 'write the path of a recipe file, such as `use "papers.plica"`'
        : `write \`use "${path}"\``,
    ...(sure ? { fix: [{ span, text: `"${path}"` }] } : {}),
  });
  work.next += line.length;
  work.tokens.push(makeToken(Text, written, span.start, path));
}

function dropMark(work: Work, mark: Token): void {
  const at = spanOf(work.source, mark);
  say(work, {
    message: `no \`${mark.image}\` follows \`use\``,
    at,
    help: 'take it out',
    fix: [{ span: at, text: work.source.text[at.end] === ' ' ? '' : ' ' }],
  });
  work.next++;
}
