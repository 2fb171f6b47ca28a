import type { Units } from '../../measure/unit.js';
import type { Size } from '../../recipe/recipe.js';
import type { EmitOptions } from '../emitter.js';
import type { Found } from '../json/found.js';
import type { Leaf, Row } from './leaf.js';

/** A run of recipes under a title; the title is null where the catalogue has no sections. */
export interface Chapter {
  readonly title: string | null;
  readonly rows: readonly Row[];
}

/** A catalogue in the order in which it is read. */
export interface Book {
  readonly title: string;
  readonly by: string | null;
  readonly note: readonly string[];
  readonly foreword: readonly string[];
  /** Those that come first where a figure is given twice. */
  readonly units: Units;
  /** Upright, in mm. */
  readonly page: Size;
  readonly chapters: readonly Chapter[];
  /** What keeps recipes of the folder out of the book, in order: file, line, column. */
  readonly problems: readonly Found[];
}

/** A book, and the leaves of its rows, each read when it is asked for. */
export interface BookSource {
  readonly book: Book;
  readonly leaf: (row: Row) => Leaf;
}

export interface BookOptions extends Pick<EmitOptions, 'date' | 'fonts'> {
  /** PDF only: two pages to a sheet, for folding and stapling. */
  readonly booklet: boolean;
  /** Told how many pages a book has that has pages. */
  readonly tell: (pages: number) => void;
  /** Told after each recipe that has been written. */
  readonly advance: () => void;
}

/** Writes a book in one format, piece by piece: a piece is asked for when the one before has gone. */
export type BookEmitter = (source: BookSource, options: BookOptions) => AsyncIterable<Uint8Array>;
