import { compile } from '../../src/compile.js';
import type { Job } from '../../src/emit/emitter.js';
import { source } from '../../src/text/source.js';
import { readerOf } from './compile-text.js';
import { specs } from './specs.js';

/** Every envelope of the recipes that come with plica, by name. */
export function specJobs(): Readonly<Record<string, Job>> {
  const files = specs();
  const inputs = Object.entries(files).map(([path, text]) => ({ id: path, source: source(path, text) }));
  return Object.fromEntries(
    compile(inputs, readerOf(files)).recipes.map((recipe) => [recipe.envelope.name, recipe]),
  );
}
