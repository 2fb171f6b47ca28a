import { report } from '../diagnostics/problem.js';
import type { Dimension } from '../measure/quantity.js';
import { exactLength } from '../measure/ruler.js';
import { NEARLY } from '../measure/slack.js';
import type { AtomNode, ItemNode, SizeNode, WordNode } from '../syntax/ast.js';
import { nearest } from '../text/nearest.js';
import { type Span, spanText } from '../text/span.js';
import { dimensionAt, dimensionOf, evaluate } from './evaluate.js';
import { A_KIND, type BlockDeclaration } from './names.js';
import type { Place } from './place.js';
import { missing, range, repeated, unknownName, wrongKind } from './problems.js';
import { quote, quoteText } from './quote.js';
import type { CornerTreatment, FlapShape, Size } from './recipe.js';
import { anyOf, undeclared } from './unknown-word.js';

/** A kind of value that a property takes: how it is called, and how its items are read (null: broken, reported). */
export interface Kind<T> {
  readonly wants: string;
  readonly read: (items: readonly ItemNode[], place: Place) => T | null;
}

type Limits = 'above 0' | '0 or more';

/** mm; no sheet of paper that a hand folds is longer. */
const LONGEST = 5000;

export const length = (limits: Limits): Kind<number> =>
  one('a length', (item, place) => {
    const mm = lengthOf(item, place);
    return mm !== null && inRange(mm, limits, item.span, place) ? mm : null;
  });

export const size: Kind<Size> = one('a size, such as `8 1/2 x 5 1/2` or `A6`', sizeOf);

/** One length for both sides (a square, the same ease each way), or two. */
export const lengthOrSize = (limits: Limits): Kind<Size> =>
  one('a length or a size', (item, place) => {
    const read = lengthOrSizeOf(item, place);
    return read && sidesInRange(read, limits, item, place) ? read : null;
  });

/** One length for left and right, or two with a comma. */
export const pairOfLengths: Kind<readonly [left: number, right: number]> = {
  wants: 'a length, or two with a comma: left, right',
  read: (items, place) => {
    if (!upTo(2, items, 'one length, or two: left, right', place)) return null;
    const size = items.find((item) => item.kind === 'size');
    if (size) return notASize(size, place);
    const read = items.map((item) => {
      const mm = lengthOf(item, place);
      return mm !== null && inRange(mm, '0 or more', item.span, place) ? mm : null;
    });
    const [left = null, right = left] = read;
    return left === null || right === null ? null : [left, right];
  },
};

export const mass: Kind<number> = one('a mass', (item, place) => measured(item, 'mass', '0 or more', place));

export const grammage: Kind<number> = one('a weight per area, `gsm` or `lb` with a grade', (item, place) =>
  measured(item, 'grammage', 'above 0', place),
);

export const plainNumber: Kind<number> = one('a plain number', (item, place) =>
  measured(item, 'number', '0 or more', place),
);

export const count: Kind<number> = one('a whole number', (item, place) => {
  const value = measured(item, 'number', '0 or more', place);
  if (value === null || Math.abs(value - Math.round(value)) <= NEARLY)
    return value === null ? null : Math.round(value);
  place.context.tell(
    report(range, {
      message: `${place.what} counts sheets, and ${quote(item.span)} is not a whole number`,
      at: item.span,
      help: `write \`${Math.floor(value)}\``,
    }),
  );
  return null;
});

export const text: Kind<string> = one('a string', stringOf);

export const texts: Kind<readonly string[]> = {
  wants: 'strings with commas between them',
  read: (items, place) => allOf(items.map((item) => stringOf(item, place))),
};

export const words: Kind<readonly string[]> = {
  wants: 'words with commas between them',
  read: (items, place) => {
    const read = allOf(items.map((item) => wordOf(item, 'a word', place)?.text ?? null));
    if (read === null) return null;
    const again = read.findIndex((word, index) => read.indexOf(word) < index);
    if (again < 0) return read;
    place.context.tell(
      report(repeated, {
        message: `${place.what} names \`${read[again]}\` twice`,
        at: (items[again] as ItemNode).span,
        related: [
          { span: (items[read.indexOf(read[again] as string)] as ItemNode).span, text: 'first here' },
        ],
        help: 'leave one out',
      }),
    );
    return null;
  },
};

export const choice = <const Word extends string>(...offered: readonly Word[]): Kind<Word> =>
  one(anyOf(offered), (item, place) => choose(item, offered, place));

/** One word for both pairs, or two: the bottom pair, the seal pair. */
export const corners: Kind<{ readonly bottom: CornerTreatment; readonly seal: CornerTreatment }> = {
  wants: '`folded` or `notched`, or two with a comma: the bottom pair, the seal pair',
  read: (items, place) => {
    if (!upTo(2, items, 'one word, or two: the bottom pair, the seal pair', place)) return null;
    const read = items.map((item) => choose(item, ['folded', 'notched'] as const, place));
    const [bottom = null, seal = bottom] = read;
    return bottom === null || seal === null ? null : { bottom, seal };
  },
};

/** The paper of that name. */
export const paperName: Kind<BlockDeclaration> = one('the name of a paper', (item, place) => {
  const word = wordOf(item, 'the name of a paper', place);
  if (word === null) return null;
  const { context, file } = place;
  const declaration = context.names.find(word.text, file);
  if (declaration?.kind === 'paper') return declaration;
  if (declaration) {
    context.tell(
      report(wrongKind, {
        message: `${quote(word.span)} is ${A_KIND[declaration.kind]}, and ${place.what} wants the name of a paper`,
        at: word.span,
        related: [{ span: declaration.node.name.span, text: 'declared here' }],
        help: `name a paper, or declare one: \`paper my-${word.text} { … }\``,
      }),
    );
  } else if (context.names.complete(file)) {
    context.tell(undeclared(word, 'no paper that is known here', ['paper'], context, file));
  }
  return null;
});

const SHAPES = '`pointed`, `rounded R`, `blunt T` or `blunt T rounded R`, where R and T are lengths';

export const flapShape: Kind<FlapShape> = one(SHAPES, (item, place) => {
  const atoms = item.kind === 'phrase' ? item.atoms : item.kind === 'word' ? [item] : [];
  const [first, second, third, fourth, ...more] = atoms;
  const word = first?.kind === 'word' ? first.text : '';
  if (word === 'pointed' && second === undefined) return { kind: 'pointed' };
  if (word === 'rounded' && third === undefined) {
    const radius = shapeLength(second, item, '`rounded` needs its radius', 'rounded', place);
    return radius === null ? null : { kind: 'rounded', radius };
  }
  const rounded = third === undefined || (third.kind === 'word' && third.text === 'rounded');
  if (word === 'blunt' && rounded && more.length === 0) {
    const cut = shapeLength(second, item, '`blunt` needs the length to cut off the tip', 'blunt', place);
    const radius = third ? shapeLength(fourth, third, '`rounded` needs its radius', 'rounded', place) : 0;
    return cut === null || radius === null ? null : { kind: 'blunt', cut, radius };
  }
  place.context.tell(
    report(wrongKind, {
      message: `${place.what} wants a shape, and ${quote(item.span)} is none`,
      at: item.span,
      why: `a shape is ${SHAPES}`,
      help: nearShape(word, place),
    }),
  );
  return null;
});

function nearShape(word: string, place: Place): string {
  const [near] = nearest(word, ['pointed', 'rounded', 'blunt']);
  return `write \`${place.what.replaceAll('`', '')}: ${near === 'pointed' ? near : `${near ?? 'rounded'} ${exampleLength(place)}`}\``;
}

const exampleLength = ({ file }: Place): string =>
  ({ in: '3/8', cm: '1', mm: '10', none: '10 mm', broken: '10 mm' })[file.units];

/** A length inside a shape; reports its absence. */
function shapeLength(
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

function one<T>(wants: string, read: (item: ItemNode, place: Place) => T | null): Kind<T> {
  return {
    wants,
    read: (items, place) => {
      const [item] = items;
      return item && upTo(1, items, wants, place) ? read(item, place) : null;
    },
  };
}

function upTo(most: number, items: readonly ItemNode[], wants: string, { context, what }: Place): boolean {
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

const allOf = <T>(read: readonly (T | null)[]): readonly T[] | null =>
  read.every((each) => each !== null) ? read : null;

function lengthOf(item: ItemNode, place: Place): number | null {
  if (item.kind === 'string') return notAString(item.span, 'a length', place);
  const value = evaluate(item, place);
  return value && dimensionOf(value, 'length', item.span, place);
}

function measured(item: ItemNode, dimension: Dimension, limits: Limits, place: Place): number | null {
  if (item.kind === 'string') return notAString(item.span, 'a number', place);
  const value = evaluate(item, place);
  const read = value && dimensionOf(value, dimension, item.span, place);
  if (read === null || (limits === 'above 0' ? read > 0 : read >= 0)) return read;
  place.context.tell(
    report(range, {
      message: `${place.what} is ${quote(item.span)}, and must be ${limits}`,
      at: item.span,
      help: read < 0 ? 'leave out the minus sign' : 'leave the property out if it is not known',
    }),
  );
  return null;
}

function sizeOf(item: ItemNode, place: Place): Size | null {
  if (item.kind === 'string') return notAString(item.span, 'a size', place);
  const value = evaluate(item, place);
  if (value === null) return null;
  if (value.kind === 'size') return sidesInRange(value.size, 'above 0', item, place) ? value.size : null;
  place.context.tell(
    report(wrongKind, {
      message: `${place.what} wants a size, and ${quote(item.span)} is one number`,
      at: item.span,
      help: `write two sides with \`x\` between them, such as \`${spanOfOne(item)} x ${spanOfOne(item)}\`, or a size by name`,
    }),
  );
  return null;
}

const spanOfOne = (item: ItemNode): string => quote(item.span).slice(1, -1);

function lengthOrSizeOf(item: ItemNode, place: Place): Size | null {
  if (item.kind === 'string') return notAString(item.span, 'a length or a size', place);
  const value = evaluate(item, place);
  if (value === null || value.kind === 'size') return value && value.size;
  const mm = dimensionOf(value, 'length', item.span, place);
  return mm === null ? null : { width: mm, height: mm };
}

function notASize({ first, second, span }: SizeNode, { context, what }: Place): null {
  context.tell(
    report(wrongKind, {
      message: `${what} wants a length for left and right, or two with a comma, and ${quote(span)} is a size`,
      at: span,
      help: `write ${quoteText(`${spanText(first.span)}, ${spanText(second.span)}`)}`,
    }),
  );
  return null;
}

function sidesInRange({ width, height }: Size, limits: Limits, item: ItemNode, place: Place): boolean {
  const [first, second] = item.kind === 'size' ? [item.first.span, item.second.span] : [item.span, item.span];
  return inRange(width, limits, first, place) && inRange(height, limits, second, place);
}

/** Reports a length below what is allowed, or longer than any sheet. */
function inRange(mm: number, limits: Limits, at: Span, place: Place): boolean {
  const enough = limits === 'above 0' ? mm > NEARLY : mm >= -NEARLY;
  if (enough && mm <= LONGEST + NEARLY) return true;
  const units = place.file.units === 'none' || place.file.units === 'broken' ? 'mm' : place.file.units;
  const shown = exactLength(mm, units);
  place.context.tell(
    report(range, {
      message: enough
        ? `${place.what} is ${shown} here, which is longer than any sheet`
        : `${place.what} is ${shown} here, and must be ${limits}`,
      at,
      ...(enough ? { why: `a length may be ${exactLength(LONGEST, units)} (5 m) at most` } : {}),
      help: enough
        ? 'check the unit: a bare number is read in the `units` of its file'
        : mm < -NEARLY
          ? 'leave out the minus sign'
          : 'write a length above 0, or leave the property out',
    }),
  );
  return false;
}

function stringOf(item: ItemNode, place: Place): string | null {
  if (item.kind === 'string') return item.value;
  place.context.tell(
    report(wrongKind, {
      message: `${place.what} wants a string, and ${quote(item.span)} stands without quotes`,
      at: item.span,
      help: `write \`"${quote(item.span).slice(1, -1)}"\``,
    }),
  );
  return null;
}

function notAString(at: Span, wants: string, place: Place): null {
  place.context.tell(
    report(wrongKind, {
      message: `${place.what} wants ${wants}, and ${quote(at)} is a string`,
      at,
      help: `write ${quote(at).replaceAll('"', '')}, without the quotes`,
    }),
  );
  return null;
}

function wordOf(item: ItemNode, wants: string, place: Place): WordNode | null {
  if (item.kind === 'word') return item;
  if (item.kind === 'string') return notAString(item.span, wants, place);
  place.context.tell(
    report(wrongKind, {
      message: `${place.what} wants ${wants}, and ${quote(item.span)} is not one word`,
      at: item.span,
      help:
        item.kind === 'phrase'
          ? 'join the words with hyphens, or put a comma between them'
          : `write ${wants}`,
    }),
  );
  return null;
}

function choose<Word extends string>(item: ItemNode, offered: readonly Word[], place: Place): Word | null {
  const word = wordOf(item, anyOf(offered), place);
  if (word === null) return null;
  const found = offered.find((each) => each === word.text);
  if (found !== undefined) return found;
  const [near] = nearest(word.text, offered);
  place.context.tell(
    report(unknownName, {
      message: `${place.what} is ${anyOf(offered)}, not ${quote(word.span)}`,
      at: word.span,
      help: near ? `did you mean \`${near}\`?` : `write ${anyOf(offered)}`,
    }),
  );
  return null;
}
