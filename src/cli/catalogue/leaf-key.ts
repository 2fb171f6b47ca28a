import { createHash } from 'node:crypto';
import type { CompiledRecipe } from '../../compile.js';

/** Parts of a value that say where it was written, not what it is. */
const PLACES: ReadonlySet<string> = new Set([
  'span',
  'valueSpan',
  'statement',
  'origin',
  'layers',
  'primary',
  'related',
  'fix',
  'problem',
]);

/**
 * The name of a recipe's leaf: all that the leaf is made of, hashed. `edition` stands for the program and its fonts. Where the recipe
 * is written is left out, so that a leaf outlives edits around it.
 */
export function leafKey({ envelope, facts, diagnostics }: CompiledRecipe, edition: string): string {
  const { source, start, end } = envelope.statement;
  const rules = diagnostics.map(({ problem }) => problem.name);
  const made = JSON.stringify([edition, envelope, facts, rules, diagnostics], (key, value: unknown) =>
    PLACES.has(key) ? undefined : value,
  );
  return sha256(made, source.text.slice(start, end));
}

export function sha256(...texts: readonly (string | Uint8Array)[]): string {
  const hash = createHash('sha256');
  for (const text of texts) hash.update(text);
  return hash.digest('hex');
}
