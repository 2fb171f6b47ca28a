import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import type { Edit } from '../../src/text/edit.js';
import type { Source } from '../../src/text/source.js';
import { slip } from '../slip.js';
import { endOf, readAs, spanOf, type Token } from '../token.js';
import { Stray } from '../tokens.js';
import type { Seen } from './look.js';

/** `// …`, `-- …` and a comment between slashes and stars: read as the comment it is meant to be. */
export function lookAtOddComment(token: Token, source: Source): Seen {
  const mark = token.image.slice(0, 2);
  const at = { source, start: token.startOffset, end: token.startOffset + mark.length };
  const finding = slip({
    message: 'a comment begins with `#`, and ends with its line',
    at,
    help:
      mark === '/*'
        ? 'write `#` before each line of it'
        : cropToLine(`write \`#${token.image.slice(mark.length)}\``),
    ...fixFor(token, source),
  });
  return { reading: null, finding };
}

const cropToLine = (text: string): string => text.replace(/\s+/g, ' ');

/** A `#` for each line; none where the recipe goes on behind the comment, or its end is missing. */
function fixFor(token: Token, source: Source): { readonly fix?: readonly Edit[] } {
  const { image, startOffset: start } = token;
  if (!image.startsWith('/*')) return { fix: [{ span: { source, start, end: start + 2 }, text: '#' }] };
  const end = endOf(token);
  const alone = /^[ \t]*(?:[\r\n]|$)/.test(source.text.slice(end, end + 100));
  if (!alone || !/^.{2}[^]*\*\/$/.test(image) || image.length > 2000) return {};
  const inner = image.slice(2, -2).trimEnd();
  return { fix: [{ span: spanOf(source, token), text: `#${inner.replace(/\r\n|\r|\n/g, '$&# ')}` }] };
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
