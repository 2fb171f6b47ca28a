import type { Source } from '../../src/text/source.js';
import type { Span } from '../../src/text/span.js';
import { characterName } from '../characters.js';
import { slip } from '../slip.js';
import { endOf, is, readAs, spanOf, type Token } from '../token.js';
import { NumberToken, Text } from '../tokens.js';
import type { Seen } from './look.js';

/** `"…"`: its value, or a backslash that means nothing. */
export function lookAtText(token: Token, source: Source): Seen {
  const raw = source.text.slice(token.startOffset + 1, endOf(token) - 1);
  if (!raw.includes('\\')) return { reading: readAs(Text, token, raw) };
  const wrong = /\\[^"\\]/.exec(raw.replace(/\\["\\]/g, '  '));
  if (wrong === null) return { reading: readAs(Text, token, raw.replace(/\\(["\\])/g, '$1')) };
  const start = token.startOffset + 1 + wrong.index;
  const finding = slip({
    message: `\`${wrong[0]}\` in a string has no meaning`,
    at: { source, start, end: start + 2 },
    why: 'only `\\"` and `\\\\` are written with a backslash',
    help: 'write `\\\\` for a backslash, or leave it out',
  });
  return { reading: readAs(Text, token, null), finding };
}

/** Quotes that are curly, low, single, or a web page's `&quot;`. */
export function lookAtOddText(token: Token, source: Source, before: Token | undefined): Seen {
  // After a number it is a pair of inch marks; the parser stops at it and says so.
  if (is(before, NumberToken)) return { reading: readAs(Text, token) };
  const width = token.image.startsWith('&') ? '&quot;'.length : 1;
  const value = source.text.slice(token.startOffset + width, endOf(token) - width);
  const spans: readonly Span[] = [token.startOffset, endOf(token) - width]
    .map((start) => ({ source, start, end: start + width }))
    .filter(({ start }) => source.text[start] !== '"');
  const [first = spanOf(source, token)] = spans;
  const finding = slip({
    message: 'a string stands between straight double quotes',
    at: first,
    label:
      width > 1
        ? 'this is how a web page spells a quote'
        : `this is ${characterName(source.text.charCodeAt(first.start))}`,
    help: `write \`"${value}"\``,
    ...(/["\\]/.test(value) ? {} : { fix: spans.map((span) => ({ span, text: '"' })) }),
  });
  return { reading: readAs(Text, token, value), finding };
}
