import { report } from '../../diagnostics/problem.js';
import type { Dimension } from '../../measure/quantity.js';
import { exactLength } from '../../measure/ruler.js';
import { NEARLY } from '../../measure/slack.js';
import type { ItemNode, SizeNode } from '../../syntax/ast.js';
import type { Edit } from '../../text/edit.js';
import { type Span, spanText } from '../../text/span.js';
import { dimensionOf, evaluate } from '../sums/evaluate.js';
import { type Kind, notAMeasure, one, upTo } from './kind.js';
import { letLabel } from '../sums/let-label.js';
import type { Place } from '../place.js';
import { range, wrongKind } from '../problems.js';
import { quote, quoteText } from '../quote.js';
import type { Size } from '../recipe.js';
import { A_DIMENSION } from '../sums/value.js';

type Limits = 'above 0' | '0 or more';

/** mm; no sheet of paper that a hand folds is longer. */
const LONGEST = 5000;

export const length = (limits: Limits): Kind<number> =>
  one('a length', (item, place) => {
    const mm = lengthOf(item, place);
    return mm !== null && inRange(mm, limits, item.span, place) ? mm : null;
  });

/** Two lengths with a comma between them are taken for the sides that they surely are. */
export const size: Kind<Size> = {
  wants: 'a size, such as `8 1/2 x 5 1/2` or `A6`',
  read: (items, place) => {
    const [first, second, ...more] = items;
    const sides = first?.kind === 'number' && second?.kind === 'number' && more.length === 0;
    const joined = sides && quoteText(`${spanText(first.span)} x ${spanText(second.span)}`);
    const between = sides && { ...first.span, start: first.span.end, end: second.span.start };
    const otherwise = between
      ? { help: `write ${joined}`, fix: [{ span: between, text: ' x ' }] }
      : { help: 'leave out what is too many; the sides of a size have `x` between them, not a comma' };
    return first && upTo(1, items, 'one size', place, otherwise) ? sizeOf(first, place) : null;
  },
};

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

/** A part of a whole: 0 to 1. */
export const share: Kind<number> = one('a number with `%`, up to 100 %', (item, place) => {
  const value = measured(item, 'number', '0 or more', place);
  if (value === null || value <= 1) return value;
  const text = spanText(item.span);
  place.context.tell(
    report(range, {
      message: `${place.what} is ${quote(item.span)}, and more than 100 % is no part of a whole`,
      at: item.span,
      ...(item.kind === 'number' && item.unit === null && value <= 100
        ? { help: `write \`${text}%\``, fix: [{ span: item.span, text: `${text}%` }] }
        : { help: 'write a number up to 100 with `%`' }),
    }),
  );
  return null;
});

export const count: Kind<number> = one('a whole number', (item, place) => {
  const value = measured(item, 'number', '0 or more', place);
  if (value === null || Math.abs(value - Math.round(value)) <= NEARLY)
    return value === null ? null : Math.round(value);
  place.context.tell(
    report(range, {
      message: `${place.what} wants a whole number, and ${quote(item.span)} is not one`,
      at: item.span,
      help: `write \`${Math.floor(value)}\` or \`${Math.ceil(value)}\``,
    }),
  );
  return null;
});

function lengthOf(item: ItemNode, place: Place): number | null {
  if (item.kind === 'string') return notAMeasure(item, 'a length', place);
  const value = evaluate(item, place);
  return value && dimensionOf(value, 'length', item.span, place);
}

function measured(item: ItemNode, dimension: Dimension, limits: Limits, place: Place): number | null {
  if (item.kind === 'string') return notAMeasure(item, A_DIMENSION[dimension], place);
  const value = evaluate(item, place);
  const read = value && dimensionOf(value, dimension, item.span, place);
  if (read === null || (limits === 'above 0' ? read > 0 : read >= 0)) return read;
  place.context.tell(
    report(range, {
      message: `${place.what} is ${quote(item.span)}, and must be ${limits}`,
      at: item.span,
      related: letLabel(item.span, place),
      help: read < 0 ? 'leave out the minus sign' : 'leave the property out if it is not known',
    }),
  );
  return null;
}

function sizeOf(item: ItemNode, place: Place): Size | null {
  if (item.kind === 'string') return notAMeasure(item, 'a size', place);
  const value = evaluate(item, place);
  if (value === null) return null;
  if (value.kind === 'size') return sidesInRange(value.size, 'above 0', item, place) ? value.size : null;
  place.context.tell(
    report(wrongKind, {
      message: `${place.what} wants a size, and ${quote(item.span)} is one number`,
      at: item.span,
      ...sidesMeant(item),
    }),
  );
  return null;
}

/** `5 * 7` is what a multiplication sign between two sides was typed as. */
function sidesMeant(item: ItemNode): { readonly help: string; readonly fix?: readonly Edit[] } {
  const [left, right] = item.kind === 'binary' && item.operator === '*' ? [item.left, item.right] : [];
  if (left?.kind !== 'number' || right?.kind !== 'number') {
    return {
      help: `write two sides with \`x\` between them, such as \`${spanOfOne(item)} x ${spanOfOne(item)}\`, or a size by name`,
    };
  }
  const between = { ...item.span, start: left.span.end, end: right.span.start };
  return {
    help: `write ${quoteText(`${spanText(left.span)} x ${spanText(right.span)}`)}`,
    fix: [{ span: between, text: ' x ' }],
  };
}

const spanOfOne = (item: ItemNode): string => quote(item.span).slice(1, -1);

function lengthOrSizeOf(item: ItemNode, place: Place): Size | null {
  if (item.kind === 'string') return notAMeasure(item, 'a length or a size', place);
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
export function inRange(mm: number, limits: Limits, at: Span, place: Place): boolean {
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
      related: letLabel(at, place),
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
