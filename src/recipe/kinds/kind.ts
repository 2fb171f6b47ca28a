import { report, type Report } from '../../diagnostics/problem.js';
import type { ItemNode, StringNode } from '../../syntax/ast.js';
import type { Place } from '../place.js';
import { wrongKind } from '../problems.js';
import { quote, quoteText } from '../quote.js';

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

/** Reports a list that is too long; `help` says what else may have been meant. */
export function upTo(
  most: number,
  items: readonly ItemNode[],
  wants: string,
  { context, what }: Place,
  otherwise: Pick<Report, 'help' | 'fix'> = { help: 'leave out what is too many' },
): boolean {
  const extra = items[most];
  if (extra === undefined) return true;
  context.tell(
    report(wrongKind, {
      message: `${what} takes ${wants}, and a list of ${items.length} stands here`,
      at: extra.span,
      label: 'one too many',
      ...otherwise,
    }),
  );
  return false;
}

/** Reports a string where a number or a size is wanted. */
export const notAMeasure = (node: StringNode, wants: string, place: Place): null =>
  notAString(node, wants, MEASURE.test(node.value) ? node.value : null, place);

/** One word, a folded sheet, or what begins with a number. */
const MEASURE = /^(?:(?:half |third |quarter )?[a-z][a-z\d-]*|[\d½¼¾⅛⅜⅝⅞.][\w½¼¾⅛⅜⅝⅞ ./%-]*)$/i;

/** Reports a string where a word is wanted; several words were meant as one with hyphens. */
export function notAWord(node: StringNode, wants: string, place: Place): null {
  const joined = node.value.trim().replaceAll(/[\s-]+/g, '-');
  return notAString(node, wants, WORD.test(joined) ? joined : null, place);
}

const WORD = /^[a-z][a-z\d]*(?:-[a-z\d]+)*$/i;

/** `meant`: what would stand without the quotes; null where that is no value of this kind either. */
function notAString({ span }: StringNode, wants: string, meant: string | null, place: Place): null {
  place.context.tell(
    report(wrongKind, {
      message: `${place.what} wants ${wants}, and ${quote(span)} is a string`,
      at: span,
      ...(meant === null
        ? { help: 'write it without quotes; only a `title`, a `note` and a path are strings' }
        : { help: `write ${quoteText(meant)}, without the quotes`, fix: [{ span, text: meant }] }),
    }),
  );
  return null;
}
