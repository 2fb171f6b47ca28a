import { report } from '../../diagnostics/problem.js';
import type { AtomNode } from '../../syntax/ast.js';
import { nearest } from '../../text/nearest.js';
import { spanText } from '../../text/span.js';
import { type Kind, one } from './kind.js';
import { exampleLength, namedLength } from './named-length.js';
import type { Place } from '../place.js';
import { wrongKind } from '../problems.js';
import { quote } from '../quote.js';
import type { FlapShape } from '../recipe.js';

const SHAPES = '`pointed`, `rounded R`, `blunt T` or `blunt T rounded R`, where R and T are lengths';

export const flapShape: Kind<FlapShape> = one(SHAPES, (item, place) => {
  const atoms = item.kind === 'phrase' ? item.atoms : item.kind === 'word' ? [item] : [];
  const [first, second, third, fourth, ...more] = atoms;
  const word = first?.kind === 'word' ? first.text : '';
  if (word === 'pointed' && second === undefined) return { kind: 'pointed' };
  if (word === 'rounded' && third === undefined) {
    const radius = namedLength(second, item, '`rounded` needs its radius', 'rounded', place);
    return radius === null ? null : { kind: 'rounded', radius };
  }
  const rounded = third === undefined || (third.kind === 'word' && third.text === 'rounded');
  if (word === 'blunt' && rounded && more.length === 0) {
    const cut = namedLength(second, item, '`blunt` needs the length to cut off the tip', 'blunt', place);
    const radius = third ? namedLength(fourth, third, '`rounded` needs its radius', 'rounded', place) : 0;
    return cut === null || radius === null ? null : { kind: 'blunt', cut, radius };
  }
  place.context.tell(
    report(wrongKind, {
      message: `${place.what} wants a shape, and ${quote(item.span)} is none`,
      at: item.span,
      why: `a shape is ${SHAPES}`,
      ...(SHAPE_WORDS.includes(word.toLowerCase()) && first && word !== word.toLowerCase()
        ? {
            help: `write \`${word.toLowerCase()}\` in lower case`,
            fix: [{ span: first.span, text: word.toLowerCase() }],
          }
        : { help: nearShape(word, atoms.slice(1), place) }),
    }),
  );
  return null;
});

const SHAPE_WORDS: readonly string[] = ['pointed', 'rounded', 'blunt'];

/** The shape whose word is nearest, with the lengths that are written. */
function nearShape(word: string, lengths: readonly AtomNode[], place: Place): string {
  const [near = 'rounded'] = nearest(word, SHAPE_WORDS);
  const written = lengths.map(({ span }) => spanText(span)).join(' ');
  const length = near === 'pointed' ? '' : ` ${written === '' ? exampleLength(place) : written}`;
  return `write \`${place.what.replaceAll('`', '')}: ${near}${length}\``;
}
