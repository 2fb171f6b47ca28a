import { report } from '../diagnostics/problem.js';
import type { Kind } from './kinds/kind.js';
import { size } from './kinds/length-kinds.js';
import { range } from './problems.js';
import { quote } from './quote.js';
import type { Size } from './recipe.js';
import { text, texts } from './kinds/word-kinds.js';

interface CatalogueProperty<T> {
  readonly kind: Kind<T>;
  /** In words, for people. */
  readonly leftOut: string;
  readonly meaning: string;
}

/** A page's sides in mm, and by how much one may be longer than the other. */
const SHORTEST = 90;
const LONGEST = 500;
const LONGEST_SHAPE = 2;

/** A page of a book, upright however it is written. */
const page: Kind<Size> = {
  wants: size.wants,
  read: (items, place) => {
    const read = size.read(items, place);
    const [first] = items;
    if (read === null || first === undefined) return null;
    const [width, height] = [Math.min(read.width, read.height), Math.max(read.width, read.height)];
    if (width >= SHORTEST && height <= LONGEST && height <= LONGEST_SHAPE * width) return { width, height };
    place.context.tell(
      report(range, {
        message: `${quote(first.span)} is no page of a catalogue`,
        at: first.span,
        why: `its sides are ${SHORTEST} to ${LONGEST} mm, the longer at most ${LONGEST_SHAPE} times the shorter`,
        help: 'write `page: A5`, `page: half letter` or another size that a book may have',
      }),
    );
    return null;
  },
};

/** Every property of a catalogue, in the order in which grammar/reference.md lists them. */
export const CATALOGUE_PROPERTIES = {
  title: { kind: text, leftOut: 'the folder’s name', meaning: 'on the cover' },
  by: { kind: text, leftOut: 'nobody', meaning: 'who made it, beneath the title' },
  note: { kind: texts, leftOut: 'none', meaning: 'on the cover, a paragraph each' },
  foreword: { kind: texts, leftOut: 'none', meaning: 'before the contents, a paragraph each' },
  page: {
    kind: page,
    leftOut: '`half letter` where `units in`, else `A5`',
    meaning: 'the page of the book, upright however it is written',
  },
} as const satisfies Readonly<Record<string, CatalogueProperty<unknown>>>;

export type CatalogueProperties = typeof CATALOGUE_PROPERTIES;

export const isCatalogueProperty = (name: string): name is keyof CatalogueProperties =>
  Object.hasOwn(CATALOGUE_PROPERTIES, name);
