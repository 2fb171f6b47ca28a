import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import type { Report } from '../../src/diagnostics/problem.js';
import type { Source } from '../../src/text/source.js';
import { slip } from '../slip.js';
import { endOf, readAs, spanOf, type Token } from '../token.js';
import { Stray } from '../tokens.js';
import type { Seen } from './look.js';

/** What ends a comment that has an end of its own, by what begins it. */
const ends: ReadonlyMap<string, string> = new Map([
  ['/*', '*/'],
  ['<!--', '-->'],
]);

/** `// …`, `-- …`, a comment between slashes and stars, and a web page's: read as the comment it is meant to be. */
export function lookAtOddComment(token: Token, source: Source): Seen {
  const { image, startOffset: start } = token;
  const begin = [...ends.keys()].find((mark) => image.startsWith(mark)) ?? image.slice(0, 2);
  const end = ends.get(begin);
  const at = { source, start, end: start + begin.length };
  const meant =
    end === undefined
      ? {
          help: `write \`#${image.slice(begin.length).replace(/\s+/g, ' ')}\``,
          fix: [{ span: at, text: '#' }],
        }
      : lineByLine(token, source, begin, end);
  const message = 'a comment begins with `#`, and ends with its line';
  return { reading: null, finding: slip({ message, at, ...meant }) };
}

/** A `#` for each line; no edit where the recipe goes on behind the comment, or its end is missing. */
function lineByLine(token: Token, source: Source, begin: string, end: string): Pick<Report, 'help' | 'fix'> {
  const { image } = token;
  const inner = image.slice(begin.length, -end.length).trimEnd();
  const closed = image.endsWith(end) && image.length >= begin.length + end.length;
  const last = /^[ \t]*(?:[\r\n]|$)/.test(source.text.slice(endOf(token), endOf(token) + 100));
  const text = `#${inner.replace(/\r\n|\r|\n/g, '$&# ')}`;
  return {
    help: closed && !/[\r\n]/.test(inner) ? `write \`${text}\`` : 'write `#` before each line of it',
    ...(closed && last && image.length <= 2000 ? { fix: [{ span: spanOf(source, token), text }] } : {}),
  };
}

/** What a web page writes for a character that it cannot show as it is. */
const spelled: ReadonlyMap<string, string> = new Map([
  ['&amp;', '&'],
  ['&nbsp;', ' '],
  ['&times;', 'x'],
  ['&frac12;', '½'],
  ['&frac14;', '¼'],
  ['&frac34;', '¾'],
  ['&plusmn;', '±'],
  ['&minus;', '-'],
  ['&le;', '<='],
  ['&ge;', '>='],
  ['&quot;', '"'],
  ['&apos;', "'"],
  ['&#39;', "'"],
  ['&#34;', '"'],
]);

/** `&times;` */
export function lookAtEntity(token: Token, source: Source): Seen {
  const meant = spelled.get(token.image.toLowerCase());
  const at = spanOf(source, token);
  const finding = slip({
    message: `\`${token.image}\` is how a web page spells a character`,
    at,
    help: meant === undefined ? 'type the character itself' : `write \`${meant}\``,
    ...(meant === undefined || meant === '&' ? {} : { fix: [{ span: at, text: meant }] }),
  });
  return { reading: readAs(Stray, token, null), finding };
}

/** Lines of back quotes around a recipe that was pasted from a page: one finding for the pair. */
export function reportFences(source: Source, fences: readonly Token[]): readonly Diagnostic[] {
  return fences.flatMap((fence, index) => {
    if (index % 2 > 0) return [];
    const pair = fences.slice(index, index + 2);
    return slip({
      message: 'a recipe stands without the line of back quotes around it',
      at: spanOf(source, fence),
      help: pair.length > 1 ? 'take this line out, and the one after the recipe' : 'take this line out',
      fix: pair.map((each) => ({ span: spanOf(source, each), text: '' })),
    });
  });
}
