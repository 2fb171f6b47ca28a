import { type CompiledRecipe, compile } from '../../src/compile.js';
import { diff } from '../../src/diff/diff.js';
import type { Changed, Difference, Side } from '../../src/diff/difference.js';
import { fold } from '../../src/folding/fold.js';
import { measure } from '../../src/folding/measure.js';
import type { Envelope } from '../../src/recipe/recipe.js';
import { source } from '../../src/text/source.js';
import { readerOf } from './compile-text.js';

/** Recipes by the names of their files. */
export type Files = Readonly<Record<string, string>>;

/** A side of a difference: some files, compiled together. */
export const side = (files: Files, made?: (envelope: Envelope) => CompiledRecipe): Side =>
  compile(
    Object.entries(files).map(([name, text]) => ({ id: name, source: source(name, text) })),
    readerOf(files),
    made,
  );

/** The same without what rules have to say, which takes far longest where a recipe is nonsense. */
export const unchecked = (files: Files): Side =>
  side(files, (envelope) => {
    const folding = fold(envelope);
    return { envelope, folding, facts: measure(envelope, folding), diagnostics: [] };
  });

/** What differs between two states of some files. */
export const compareFiles = (before: Files, after: Files, sideOf: typeof unchecked = side): Difference =>
  diff(sideOf(before), sideOf(after));

/** The same of one recipe's text. */
export const compareTexts = (before: string, after: string, sideOf?: typeof unchecked): Difference =>
  compareFiles({ 'recipe.plica': before }, { 'recipe.plica': after }, sideOf);

/** The one envelope that changed. */
export function onlyChange({ changes }: Difference): Changed {
  const [change, ...others] = changes;
  if (!change || others.length > 0 || (change.kind !== 'changed' && change.kind !== 'renamed'))
    throw new Error(`not one change: ${changes.map(({ kind, name }) => `${kind} ${name}`).join(', ')}`);
  return change;
}
