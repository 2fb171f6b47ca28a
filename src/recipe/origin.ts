import type { Span } from '../text/span.js';

/** Where a value came from. */
export type Origin =
  /** Stated in the recipe's own block. `span` covers the value. */
  | { readonly kind: 'written'; readonly span: Span }
  /** Copied by `like`: `span` covers the value in the block that states it, `from` names that block. */
  | { readonly kind: 'inherited'; readonly span: Span; readonly from: string }
  /** Left out everywhere. `span` covers the recipe's name. */
  | { readonly kind: 'default'; readonly span: Span };

/** A value with its origin. */
export interface Stated<T> {
  readonly value: T;
  readonly origin: Origin;
}
