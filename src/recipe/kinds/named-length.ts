import { report } from '../../diagnostics/problem.js';
import type { AtomNode } from '../../syntax/ast.js';
import type { Span } from '../../text/span.js';
import { dimensionAt } from '../sums/evaluate.js';
import { inRange } from './length-kinds.js';
import type { Place } from '../place.js';
import { missing } from '../problems.js';

/** The length after a word, such as the radius of `rounded R`, 0 or more; reports its absence with `message`. */
export function namedLength(
  atom: AtomNode | undefined,
  at: { readonly span: Span },
  message: string,
  word: string,
  place: Place,
): number | null {
  if (atom) {
    const mm = dimensionAt(atom, 'length', place);
    return mm !== null && inRange(mm, '0 or more', atom.span, place) ? mm : null;
  }
  place.context.tell(
    report(missing, { message, at: at.span, help: `write \`${word} ${exampleLength(place)}\`` }),
  );
  return null;
}

/** A length as it may be written here, for help. */
export const exampleLength = ({ file }: Place): string =>
  ({ in: '3/8', cm: '1', mm: '10', none: '10 mm', broken: '10 mm' })[file.units];
