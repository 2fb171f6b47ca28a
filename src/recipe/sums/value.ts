import type { Dimension, Quantity } from '../../measure/quantity.js';
import type { Span } from '../../text/span.js';
import type { Size } from '../recipe.js';

/** What an item comes to: a quantity, or two sides. */
export type Value = Amount | { readonly kind: 'size'; readonly size: Size };

export interface Amount {
  readonly kind: 'quantity';
  readonly quantity: Quantity;
  /** The bare number, written in the value being read, that makes it plain; null for a name's value. */
  readonly bare: Span | null;
  /** The bare number it stems from, where that number's file states no `units`. */
  readonly unitless: Span | null;
}

/** A value's kind as findings name it. */
export const kindOf = (value: Value): string =>
  value.kind === 'size' ? 'a size' : A_DIMENSION[value.quantity.dimension];

export const A_DIMENSION: Readonly<Record<Dimension, string>> = {
  number: 'a plain number',
  length: 'a length',
  area: 'an area',
  mass: 'a mass',
  grammage: 'a weight per area',
};
