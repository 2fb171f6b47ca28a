import type { Compilation } from '../../src/compile.js';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import { arrange } from '../../src/emit/catalogue/arrange.js';
import type { BookEmitter, BookOptions, BookSource } from '../../src/emit/catalogue/book.js';
import { makeLeaf } from '../../src/emit/catalogue/leaf/make-leaf.js';
import type { Leaf } from '../../src/emit/catalogue/leaf.js';
import { rowOf } from '../../src/emit/catalogue/row.js';
import { fontMeasure } from '../../src/emit/font-measure.js';
import { found } from '../../src/emit/json/found.js';
import type { Catalogue } from '../../src/recipe/catalogue.js';
import { compileText } from './compile-text.js';
import { emitOptions } from './pdf-pages.js';

export const BOOK_OPTIONS: BookOptions = {
  date: emitOptions().date,
  fonts: emitOptions().fonts,
  booklet: false,
  tell: () => {},
  advance: () => {},
};

/** A catalogue as no file states it: what is left out is as if nothing were stated. */
export const stating = (parts: Partial<Catalogue>): Catalogue => ({
  span: { source: { name: 'catalogue.plica', text: '', lineStarts: [0] }, start: 0, end: 0 },
  units: 'in',
  title: null,
  by: null,
  note: [],
  foreword: [],
  page: null,
  sections: [],
  ...parts,
});

/** The sound envelopes of a text as a book, leaves and all. */
export const bookOf = (text: string, parts: Partial<Catalogue> = {}): Promise<BookSource> =>
  bookOfCompiled(compileText(text, { name: 'tides.plica' }), parts);

/** The same of what is compiled already. */
export async function bookOfCompiled(
  { recipes, diagnostics }: Compilation,
  parts: Partial<Catalogue>,
): Promise<BookSource> {
  const measure = await fontMeasure(BOOK_OPTIONS);
  const leaves = new Map<string, Leaf>();
  const rows = recipes.filter(isSound).map((recipe) => {
    const leaf = makeLeaf(recipe, measure);
    leaves.set(recipe.envelope.name, leaf);
    return rowOf(recipe, { file: 'tides.plica', leaf: recipe.envelope.name, pages: leaf.pages.length });
  });
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  const problems = errors.map((diagnostic) => found(diagnostic));
  const book = arrange({ catalogue: stating(parts), folder: 'specs', rows, problems });
  return { book, leaf: ({ leaf }) => leaves.get(leaf) as Leaf };
}

/** Whether nothing is found that keeps an envelope, or a batch, from being made. */
export const isSound = ({ diagnostics }: { readonly diagnostics: readonly Diagnostic[] }): boolean =>
  diagnostics.every(({ severity }) => severity !== 'error');

/** All that an emitter writes of a book. */
export async function writtenBy(
  emitter: BookEmitter,
  source: BookSource,
  options: Partial<BookOptions> = {},
): Promise<Buffer> {
  const pieces: Uint8Array[] = [];
  for await (const piece of emitter(source, { ...BOOK_OPTIONS, ...options })) pieces.push(piece);
  return Buffer.concat(pieces);
}

/** Envelopes of many kinds: flat and deep, inches, folded corners, a lining, a title that is hostile, a note that is long. */
export const MANY_KINDS = `units in

paper kraft {
  title: "Brown kraft"
  sheet: 12 x 12
  weight: 118 gsm
}

envelope half-letter {
  title: "Half-letter tide table"
  note: "The whole year on one card."
  tags: tides, flat
  card: 8 1/2 x 5 1/2
  paper: kraft
}

envelope quarter {
  tags: tides
  card: quarter letter
  paper: kraft
}

envelope shell-box {
  title: "Shell box <b>& \\"co\\"</b> =1+1 | *tide*"
  tags: box
  card: quarter letter
  depth: 1/2
  bulk: 3/8
}

envelope lined {
  title: "Solstice, lined"
  card: us-a6
  paper: kraft
  liner: inset 1/4
}

envelope ferry {
  title: "@ferry: opens at the end"
  card: 148 mm x 105 mm
  opens: end
}
`;
