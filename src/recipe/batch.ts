import type { Span } from '../text/span.js';
import type { Units } from '../measure/unit.js';
import type { Envelope, Layer } from './recipe.js';

/** So many of one envelope, cut from the paper that the batch says, or from its own. */
export interface Ordered {
  /** As it comes out on that paper. */
  readonly envelope: Envelope;
  readonly count: number;
  /** Covers the item that asks for it. */
  readonly span: Span;
}

/** A `batch` as meant: how many of which envelopes are made together. */
export interface Batch {
  readonly name: string;
  /** Covers the name in its header. */
  readonly span: Span;
  readonly units: Units;
  readonly title: string;
  /** How many more of each are cut, as a part of their number: 0 to 1. */
  readonly spoilage: number;
  /** In the order written. */
  readonly orders: readonly Ordered[];
  /** The batch that states the orders, where this one is `like` it; null: this one does. */
  readonly ordersFrom: string | null;
  /** What it states itself, then what it is `like`, the nearest first. */
  readonly layers: readonly Layer[];
}
