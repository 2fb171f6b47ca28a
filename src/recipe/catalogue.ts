import type { Units } from '../measure/unit.js';
import type { Span } from '../text/span.js';
import type { Size } from './recipe.js';

/** The file, at the top of a folder, that states its catalogue. */
export const STATED_IN = 'catalogue.plica';

/** What a section takes: one envelope by name, or all that have a tag. */
export interface Taken {
  readonly by: 'name' | 'tag';
  readonly word: string;
  readonly span: Span;
}

export interface CatalogueSection {
  readonly title: string;
  readonly span: Span;
  readonly takes: readonly Taken[];
}

/** A `catalogue` statement as meant. */
export interface Catalogue {
  /** Covers the word `catalogue`. */
  readonly span: Span;
  readonly units: Units;
  /** Null: not stated. */
  readonly title: string | null;
  readonly by: string | null;
  readonly note: readonly string[];
  readonly foreword: readonly string[];
  /** Upright, in mm; null: not stated. */
  readonly page: Size | null;
  /** In the order written. */
  readonly sections: readonly CatalogueSection[];
}
