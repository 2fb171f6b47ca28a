import { report } from '../diagnostics/problem.js';
import type { ItemNode } from '../syntax/ast.js';
import type { Span } from '../text/span.js';
import type { Place } from './place.js';
import { wrongKind } from './problems.js';
import { quote } from './quote.js';

/** A kind of value that a property takes: how it is called, and how its items are read (null: broken, reported). */
export interface Kind<T> {
  readonly wants: string;
  readonly read: (items: readonly ItemNode[], place: Place) => T | null;
}

/** A kind that takes one item. */
export function one<T>(wants: string, read: (item: ItemNode, place: Place) => T | null): Kind<T> {
  return {
    wants,
    read: (items, place) => {
      const [item] = items;
      return item && upTo(1, items, wants, place) ? read(item, place) : null;
    },
  };
}

/** Reports a list that is too long. */
export function upTo(
  most: number,
  items: readonly ItemNode[],
  wants: string,
  { context, what }: Place,
): boolean {
  const extra = items[most];
  if (extra === undefined) return true;
  context.tell(
    report(wrongKind, {
      message: `${what} takes ${wants}, and a list of ${items.length} stands here`,
      at: extra.span,
      label: 'one too many',
      help: 'leave out what is too many; the sides of a size have `x` between them, not a comma',
    }),
  );
  return false;
}

/** Reports a string where something else is wanted. */
export function notAString(at: Span, wants: string, place: Place): null {
  place.context.tell(
    report(wrongKind, {
      message: `${place.what} wants ${wants}, and ${quote(at)} is a string`,
      at,
      help: `write ${quote(at).replaceAll('"', '')}, without the quotes`,
    }),
  );
  return null;
}
