import { report, type Report } from '../../diagnostics/problem.js';
import { UNITS } from '../../measure/unit.js';
import type { ItemNode } from '../../syntax/ast.js';
import { spanText } from '../../text/span.js';
import { type Kind, one } from './kind.js';
import { exampleLength, namedLength } from './named-length.js';
import type { Place } from '../place.js';
import { wrongKind } from '../problems.js';
import { quote, quoteText } from '../quote.js';

const INSET = '`inset L`, where L is a length';

/** `inset 1/4`: how far inside the edges something lies, 0 or more. */
export const inset: Kind<number> = one(INSET, (item, place) => {
  const [first, length, ...more] = item.kind === 'phrase' ? item.atoms : item.kind === 'word' ? [item] : [];
  if (first?.kind === 'word' && first.text === 'inset' && more.length === 0) {
    return namedLength(length, item, '`inset` needs its length', 'inset', place);
  }
  place.context.tell(
    report(wrongKind, {
      message: `${place.what} is ${INSET}, not ${quote(item.span)}`,
      at: item.span,
      ...meant(item, place),
    }),
  );
  return null;
});

type Meant = Pick<Report, 'help' | 'fix' | 'related'>;

/** What was probably meant: a length alone, another word before it, a paper's name, or no lining. */
function meant(item: ItemNode, place: Place): Meant {
  const text = spanText(item.span);
  if (item.kind === 'number') {
    const sure = item.unit === null || UNITS.get(item.unit.text)?.dimension === 'length';
    return sure ? surely(item, `inset ${text}`) : { help: example(place) };
  }
  if (item.kind === 'binary') return { help: `write ${quoteText(`inset (${text})`)}` };
  if (item.kind === 'string' && QUOTED.test(item.value)) return surely(item, item.value);
  if (item.kind === 'word') return meantByWord(item.text, place);
  const [word, length, ...more] = item.kind === 'phrase' ? item.atoms : [];
  if (!word || !length || more.length > 0) return { help: example(place) };
  const instead = `inset ${spanText(length.span)}`;
  return spanText(word.span).toLowerCase() === 'inset'
    ? surely(item, instead)
    : { help: `write ${quoteText(instead)}` };
}

function meantByWord(word: string, place: Place): Meant {
  const named = place.context.names.find(word, place.file);
  if (named?.kind === 'let') return { help: `write \`inset ${word}\`` };
  if (named?.kind === 'paper') {
    return {
      related: [{ span: named.node.name.span, text: 'this is a paper' }],
      help: `${example(place)}, and \`liner-paper: ${word}\` on a line of its own`,
    };
  }
  return NO_LINING.has(word.toLowerCase())
    ? { help: 'leave the line out, or write `default`: no envelope is lined unless it says so' }
    : { help: example(place) };
}

/** An inset between quotes. */
const QUOTED = /^inset [\d½¼¾⅛⅜⅝⅞][\w½¼¾⅛⅜⅝⅞ ./]*$/;

const NO_LINING: ReadonlySet<string> = new Set(['none', 'no', 'off', 'without']);

const surely = ({ span }: ItemNode, text: string): Meant => ({
  help: `write ${quoteText(text)}`,
  fix: [{ span, text }],
});

const example = (place: Place): string => `write \`inset ${exampleLength(place)}\``;
