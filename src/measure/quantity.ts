import { MM_PER, type Units } from './unit.js';

export type Dimension = 'number' | 'length' | 'area' | 'mass' | 'grammage';

/**
 * The units a plain number goes by when a length is wanted: those of the file it is written in; `none` where that file
 * has no `units`; `pure` for a ratio of lengths or a percentage, which is no length anywhere.
 */
export type WrittenUnder = Units | 'none' | 'pure';

/** A value in the inner unit of its dimension: plain, mm, mm², g, g/m². */
export type Quantity =
  | { readonly dimension: 'number'; readonly value: number; readonly under: WrittenUnder }
  | { readonly dimension: Exclude<Dimension, 'number'>; readonly value: number };

/** Why two quantities do not go together, or why one is not what is wanted. */
export type Refusal =
  /** A sum of unlike things, or a product that has no name here. */
  | 'unlike'
  /** Plain numbers of files with different units met. */
  | 'other-units'
  /** A bare number was to be a length, in a file without `units`. */
  | 'no-units'
  /** A ratio or a percentage was to be a length. */
  | 'pure'
  /** A bare number was to be a mass, a grammage or an area. */
  | 'bare'
  | 'division-by-zero';

export type Operator = '+' | '-' | '*' | '/';

export const length = (value: number): Quantity => ({ dimension: 'length', value });
export const number = (value: number, under: WrittenUnder): Quantity => ({
  dimension: 'number',
  value,
  under,
});

/** Whether an operation or a conversion came to nothing. */
export const isRefusal = (result: unknown): result is Refusal => typeof result === 'string';

/** `left operator right`, dimensions minded. */
export function calculate(left: Quantity, operator: Operator, right: Quantity): Quantity | Refusal {
  if (operator === '+') return add(left, right);
  if (operator === '-') return add(left, negate(right));
  if (operator === '*') return scale(left, right, 1);
  return right.value === 0 ? 'division-by-zero' : scale(left, right, -1);
}

export const negate = (quantity: Quantity): Quantity => ({ ...quantity, value: 0 - quantity.value });

/** The value of a quantity in the inner unit of the wanted dimension; a bare number becomes a length, a zero anything. */
export function asDimension(quantity: Quantity, wanted: Dimension): number | Refusal {
  if (quantity.dimension === wanted) return quantity.value;
  if (quantity.dimension !== 'number') return 'unlike';
  if (quantity.value === 0) return 0;
  if (wanted !== 'length') return 'bare';
  if (quantity.under === 'none') return 'no-units';
  return quantity.under === 'pure' ? 'pure' : quantity.value * MM_PER[quantity.under];
}

function add(left: Quantity, right: Quantity): Quantity | Refusal {
  if (left.dimension === 'number' && right.dimension === 'number') {
    return together(left, right, left.value + right.value);
  }
  const { dimension } = left.dimension === 'number' ? right : left;
  const one = asDimension(left, dimension);
  const other = asDimension(right, dimension);
  if (isRefusal(one)) return one;
  if (isRefusal(other)) return other;
  return { ...(left.dimension === 'number' ? right : left), value: one + other };
}

/** Powers of length and mass in each dimension, and one inner unit of it in mm and g. */
const POWERS: Readonly<
  Record<Dimension, { readonly mm: number; readonly g: number; readonly unit: number }>
> = {
  number: { mm: 0, g: 0, unit: 1 },
  length: { mm: 1, g: 0, unit: 1 },
  area: { mm: 2, g: 0, unit: 1 },
  mass: { mm: 0, g: 1, unit: 1 },
  grammage: { mm: -2, g: 1, unit: 1e-6 },
};
const DIMENSIONS = Object.keys(POWERS) as Dimension[];

/** `left × right` to the power of 1 or -1. */
function scale(left: Quantity, right: Quantity, power: 1 | -1): Quantity | Refusal {
  const raised = power === 1 ? right.value : 1 / right.value;
  if (left.dimension === 'number' && right.dimension === 'number') {
    return together(left, right, power === 1 ? left.value * right.value : left.value / right.value);
  }
  const one = POWERS[left.dimension];
  const other = POWERS[right.dimension];
  const dimension = DIMENSIONS.find(
    (name) => POWERS[name].mm === one.mm + power * other.mm && POWERS[name].g === one.g + power * other.g,
  );
  if (dimension === undefined) return 'unlike';
  const value = (left.value * raised * one.unit * other.unit ** power) / POWERS[dimension].unit;
  return dimension === 'number' ? number(value, 'pure') : { dimension, value };
}

type PlainNumber = Extract<Quantity, { readonly dimension: 'number' }>;

function together(left: PlainNumber, right: PlainNumber, value: number): Quantity | Refusal {
  if (left.under === 'pure') return number(value, right.under);
  if (right.under === 'pure' || right.under === left.under) return number(value, left.under);
  return 'other-units';
}
