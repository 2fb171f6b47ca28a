import { findingOf, placeOf } from '../diagnostics/render-json.js';
import { jsonText } from '../text/json-text.js';
import type {
  Changed,
  Difference,
  EnvelopeChange,
  FigureChange,
  Place,
  Recipe,
  WrittenChange,
  WrittenValue,
} from './difference.js';
import { tally } from './tally.js';

/**
 * A difference for programs; difference.schema.json says what it holds. Figures in mm, mm², g or plain, in full precision;
 * lines and columns from 1, columns in code points. What is unknown or does not apply is null.
 */
export function renderJson(difference: Difference): string {
  const { kinds, consequences } = tally(difference);
  const content = {
    format: 'plica-difference',
    version: 1,
    isPartial: difference.isPartial ?? false,
    summary: { ...kinds, consequences },
    changes: difference.changes.map(changeOf),
    shared: difference.shared.map(({ change, place, reaches }) => ({
      place: blockOf(place),
      ...writtenOf(change),
      reaches,
    })),
    batches: (difference.batches ?? []).map(({ kind, name, at, written }) => ({
      kind,
      name,
      ...placeOf(at),
      written: written.map(writtenOf),
    })),
  };
  return `${jsonText(content, 2)}\n`;
}

/** What became of one envelope, as the schema's `change` has it. */
export const changeOf = (change: EnvelopeChange) =>
  (CHANGES[change.kind] as (change: EnvelopeChange) => Readonly<Record<string, unknown>>)(change);

/** Every change has the same fields; what does not apply is null, or an empty list. */
const CHANGES: {
  readonly [Kind in EnvelopeChange['kind']]: (change: Extract<EnvelopeChange, { kind: Kind }>) => object;
} = {
  changed: changedOf,
  renamed: changedOf,
  added: ({ kind, name, after }) => ({ kind, name, ...NOTHING, after: recipeOf(after) }),
  removed: ({ kind, name, before }) => ({ kind, name, ...NOTHING, before: recipeOf(before) }),
  unreadable: ({ kind, name, side }) => ({ kind, name, ...NOTHING, unreadable: side }),
};

const NOTHING = {
  unreadable: null,
  before: null,
  after: null,
  consequences: [],
  written: [],
  figures: [],
  appeared: [],
  went: [],
};

function changedOf({ kind, name, before, after, ...change }: Changed) {
  return {
    kind,
    name,
    unreadable: null,
    before: recipeOf(before),
    after: recipeOf(after),
    consequences: change.consequences,
    written: change.written.map(writtenOf),
    figures: change.figures.map(figureOf),
    appeared: change.appeared.map(findingOf),
    went: change.went.map(findingOf),
  };
}

const recipeOf = ({ envelope, diagnostics }: Recipe) => ({
  name: envelope.name,
  title: envelope.title.value,
  ...placeOf(envelope.span),
  findings: diagnostics.map(findingOf),
});

const writtenOf = ({ property, before, after }: WrittenChange) => ({
  property,
  before: before && valueOf(before),
  after: after && valueOf(after),
});

const valueOf = ({ place, text, reading, span }: WrittenValue) => ({
  text,
  reading,
  place: blockOf(place),
  ...placeOf(span),
});

const blockOf = (place: Place) => ({ kind: place.kind, name: place.kind === 'here' ? null : place.name });

const figureOf = ({ name, dimension, before, after }: FigureChange) => ({ name, dimension, before, after });
