import { compile } from '../../src/compile.js';
import { diff } from '../../src/diff/diff.js';
import type { Changed, Difference, Side } from '../../src/diff/difference.js';
import { source } from '../../src/text/source.js';
import { readerOf } from './compile-text.js';

/** Recipes by the names of their files. */
export type Files = Readonly<Record<string, string>>;

/** A side of a difference: some files, compiled together. */
export const side = (files: Files): Side =>
  compile(
    Object.entries(files).map(([name, text]) => ({ id: name, source: source(name, text) })),
    readerOf(files),
  );

/** What differs between two states of some files. */
export const compareFiles = (before: Files, after: Files): Difference => diff(side(before), side(after));

/** The same of one recipe's text. */
export const compareTexts = (before: string, after: string): Difference =>
  compareFiles({ 'recipe.plica': before }, { 'recipe.plica': after });

/** The one envelope that changed. */
export function onlyChange({ changes }: Difference): Changed {
  const [change, ...others] = changes;
  if (!change || others.length > 0 || (change.kind !== 'changed' && change.kind !== 'renamed'))
    throw new Error(`not one change: ${changes.map(({ kind, name }) => `${kind} ${name}`).join(', ')}`);
  return change;
}
