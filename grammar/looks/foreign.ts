import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import type { Edit } from '../../src/text/edit.js';
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
  const mark = [...ends.keys()].find((begin) => token.image.startsWith(begin)) ?? token.image.slice(0, 2);
  const at = { source, start: token.startOffset, end: token.startOffset + mark.length };
  const end = ends.get(mark);
  const fix = end === undefined ? [{ span: at, text: '#' }] : fixFor(token, source, mark, end);
  const finding = slip({
    message: 'a comment begins with `#`, and ends with its line',
    at,
    help:
      end === undefined
        ? cropToLine(`write \`#${token.image.slice(mark.length)}\``)
        : 'write `#` before each line of it',
    ...(fix === null ? {} : { fix }),
  });
  return { reading: null, finding };
}

const cropToLine = (text: string): string => text.replace(/\s+/g, ' ');

/** A `#` for each line; none where the recipe goes on behind the comment, or its end is missing. */
function fixFor(token: Token, source: Source, begin: string, end: string): readonly Edit[] | null {
  const { image } = token;
  const alone = /^[ \t]*(?:[\r\n]|$)/.test(source.text.slice(endOf(token), endOf(token) + 100));
  const inner = image.slice(begin.length, -end.length);
  if (!alone || image !== begin + inner + end || image.length > 2000) return null;
  return [{ span: spanOf(source, token), text: `#${inner.trimEnd().replace(/\r\n|\r|\n/g, '$&# ')}` }];
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
