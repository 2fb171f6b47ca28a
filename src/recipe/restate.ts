import { withDefaults } from './defaults.js';
import { merged } from './likes.js';
import type { Stated } from './origin.js';
import { ALTERNATIVES, type PropertyName } from './properties.js';
import type { Entry, Envelope, Layer, Paper } from './recipe.js';

/** Properties that can be stated anew, by their names in an envelope. */
export type Restated =
  | 'seam'
  | 'blank'
  | 'face'
  | 'ease'
  | 'depth'
  | 'shift'
  | 'sideMarks'
  | 'sealMark'
  | 'bottomMark'
  | 'flap'
  | 'bottom'
  | 'sides'
  | 'corners'
  | 'tape'
  | 'liner';

/** Other values for some properties; null puts one back as if it had been left out everywhere. */
export type Statements = { readonly [Name in Restated]?: NonNullable<Envelope[Name]['value']> | null };

/** How a recipe writes a property of an envelope: `sideMarks` is `side-mark`, `linerPaper` is `liner-paper`. */
export const writtenName = (field: string): PropertyName =>
  field.replace('Marks', 'Mark').replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`) as PropertyName;

/**
 * The envelope as it would be with these statements in its own block, everything else derived anew. A null takes the
 * property's line out of the block; an inherited one is put back by `default`.
 */
export function restate(envelope: Envelope, statements: Statements): Envelope {
  const { name, span, statement, units, card, paper, linerPaper, expects, expectsPost, layers } = envelope;
  const [own, ...likes] = layers;
  const entries = new Map<string, Entry>(own?.entries);
  for (const field of displaced(envelope, statements)) entries.delete(writtenName(field));
  for (const [field, value] of Object.entries(statements)) {
    const property = writtenName(field);
    if (value !== null) entries.set(property, { state: 'stated', value, span });
    else if (!entries.delete(property)) entries.set(property, { state: 'default', value: null, span });
  }
  const anew: readonly Layer[] = [{ from: null, entries }, ...likes];
  const papers = { paper: named(paper), linerPaper: named(linerPaper) };
  return withDefaults({ name, span, statement, units }, card, papers, {
    entries: merged(anew),
    expects,
    expectsPost,
    layers: anew,
  });
}

const named = (paper: Stated<Paper | null>): Stated<Paper | null> | null =>
  paper.origin.kind === 'default' ? null : paper;

/** Properties of the envelope's own block whose place these statements take, since they say one thing twice. */
export function displaced(envelope: Envelope, statements: Statements): readonly Restated[] {
  const anew = (field: Restated): boolean => (statements[field] ?? null) !== null;
  const stays = (field: Restated): boolean =>
    statements[field] === undefined && envelope[field].origin.kind === 'written';
  return PAIRS.flatMap(([here, there]) =>
    here.some(anew) && here.every((field) => anew(field) || stays(field)) && there.every(stays) ? there : [],
  );
}

/** `side-mark` is `sideMarks` in an envelope. */
const fieldOf = (name: PropertyName): Restated =>
  (name === 'side-mark' ? 'sideMarks' : name.replace('-mark', 'Mark')) as Restated;

/** Each pair of alternatives, both ways round, by the names in an envelope. */
const PAIRS = ALTERNATIVES.flatMap(
  ([one, other]): readonly (readonly [readonly Restated[], readonly Restated[]])[] => {
    const [here, there] = [one.map(fieldOf), other.map(fieldOf)];
    return [
      [here, there],
      [there, here],
    ];
  },
);
