import type { Batch } from '../recipe/batch.js';
import { merged } from '../recipe/likes.js';
import type { PropertyName, ValueOf } from '../recipe/properties.js';
import type { Entry, Envelope, Layer, Paper, Size } from '../recipe/recipe.js';
import type { Span } from '../text/span.js';
import type { Place } from './difference.js';

/** A statement that holds. */
export interface Statement {
  readonly place: Place;
  /** What it comes to, alike for all spellings of it; null for `default`, which is as good as nothing. */
  readonly value: unknown;
  /** Covers the value. */
  readonly span: Span;
}

/** What holds, by property. */
export type Statements = ReadonlyMap<PropertyName, Statement>;

/** What holds for an envelope: what it states itself, and what it is `like` where nothing nearer takes its place. */
export const envelopeStatements = ({ layers }: Envelope): Statements =>
  holding(layers, (from) => (from === null ? { kind: 'here' } : { kind: 'style', name: from }));

/** The same for a paper. */
export const paperStatements = ({ name, layers }: Paper): Statements =>
  holding(layers, (from) => ({ kind: 'paper', name: from ?? name }));

/** The same for a batch. */
export const batchStatements = ({ layers }: Batch): Statements =>
  holding(layers, (from) => (from === null ? { kind: 'here' } : { kind: 'style', name: from }));

/** The papers of an envelope and its lining, by name. */
export const papersOf = ({ paper, linerPaper }: Envelope): ReadonlyMap<string, Paper> =>
  new Map([paper.value, linerPaper.value].flatMap((each) => (each ? [[each.name, each] as const] : [])));

function holding(layers: readonly Layer[], placeOf: (from: string | null) => Place): Statements {
  return new Map(
    [...merged(layers)].flatMap(([name, entry]): readonly [PropertyName, Statement][] => {
      const statement = statementOf(name, entry, placeOf(entry.from));
      return statement ? [[name, statement]] : [];
    }),
  );
}

/** An entry as a statement; null where it is broken (and reported), which leaves the property out. */
export function statementOf(
  name: PropertyName,
  { state, value, span }: Entry,
  place: Place,
): Statement | null {
  if (state === 'broken') return null;
  const alike = ALIKE[name] as ((value: unknown) => unknown) | undefined;
  return { place, value: state === 'default' ? null : alike ? alike(value) : value, span };
}

/** Which way round a card or a sheet is written makes no difference. */
const sides = ({ width, height }: Size): Size => ({
  width: Math.max(width, height),
  height: Math.min(width, height),
});

/** Values without what makes no difference to them. */
const ALIKE: { readonly [Name in PropertyName]?: (value: ValueOf<Name>) => unknown } = {
  card: sides,
  face: sides,
  sheet: sides,
  tags: (tags) => [...tags].sort(),
  post: (classes) => classes.map(({ post }) => post).sort(),
  paper: ({ node }) => node.name.text,
  'liner-paper': ({ node }) => node.name.text,
  make: (orders) =>
    orders.map(({ envelope, count, paper }) => [
      envelope.node.name.text,
      count,
      paper?.node.name.text ?? null,
    ]),
};
