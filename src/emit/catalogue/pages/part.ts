import type { Row } from '../leaf.js';
import type { Columns } from '../fill-pages.js';
import type { Strip } from '../strip.js';

/** On which page a recipe begins. */
export type PageOf = (row: Row) => number;

/** A part of the book that is set by itself. Its strips take the same room whatever the numbers in them. */
export interface Part {
  readonly title: string;
  readonly destination: string;
  readonly strips: (pageOf: PageOf) => Iterable<Strip>;
  readonly columns?: Columns;
  /** Above the strips of every page. */
  readonly head?: Strip;
}
