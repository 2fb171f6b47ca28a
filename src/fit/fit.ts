import type { Units } from '../measure/unit.js';
import type { Paper, Size } from '../recipe/recipe.js';
import type { Largest } from './largest-card.js';
import type { Taker } from './taken-by.js';
import type { Tried, Wish } from './wish.js';

/** A shape of cards, by the words for it. */
export interface Shape {
  readonly name: string;
  /** Longer side to shorter. */
  readonly ratio: number;
}

/** A wish with what it comes to, and how many of its blanks a sheet yields. */
export interface Served {
  readonly name: string;
  readonly wish: Wish;
  readonly tried: Tried;
  readonly copies: number;
}

/** What can be made from a sheet. */
export interface SheetFit {
  readonly kind: 'sheet';
  readonly units: Units;
  readonly sheet: Size;
  readonly depth: number;
  /** The largest card of each shape; null where no card of that shape passes every check. */
  readonly largest: readonly { readonly shape: Shape; readonly found: Largest | null }[];
  /** Named sizes that it serves, the largest first. */
  readonly sizes: readonly Served[];
  /** Recipes that it serves. */
  readonly recipes: readonly { readonly name: string; readonly blank: Size; readonly copies: number }[];
}

/** The recipe for a card, or for a card and an old blank. */
export interface CardFit {
  readonly kind: 'card';
  readonly wish: Wish;
  readonly tried: Tried;
  /** Papers whose sheets hold its blank. */
  readonly papers: readonly { readonly paper: Paper; readonly sheet: Size; readonly copies: number }[];
  /** Recipes that take the card as they are. */
  readonly takers: readonly Taker[];
}
