import type { Diagnostic } from './diagnostics/diagnostic.js';
import type { Facts } from './folding/facts.js';
import { fold } from './folding/fold.js';
import type { Folding } from './folding/folding.js';
import { measure } from './folding/measure.js';
import { batchFindings } from './plan/batch-paper.js';
import type { CompiledBatch } from './plan/compiled-batch.js';
import type { Batch } from './recipe/batch.js';
import type { Input, Reader } from './recipe/reader.js';
import type { Envelope, Paper } from './recipe/recipe.js';
import { type Resolved, resolve } from './recipe/resolve.js';
import { check, severitiesOf } from './rules/index.js';
import type { Tried } from './fit/wish.js';
import { byText } from './text/by-text.js';

/** What an envelope is known by. */
export type Known = Pick<Envelope, 'name' | 'tags' | 'span'>;

/** One envelope, and what there is to say about it. */
export interface CheckedRecipe {
  readonly envelope: Known;
  /** The findings about this envelope's folding (those of the language are in the Compilation's list too). */
  readonly diagnostics: readonly Diagnostic[];
}

/** One envelope, all the way: what was meant, how it folds, its numbers, and what there is to say about it. */
export interface CompiledRecipe extends CheckedRecipe {
  readonly envelope: Envelope;
  readonly folding: Folding;
  readonly facts: Facts;
}

/** What a set of files comes to. */
export interface Compilation<Recipe extends CheckedRecipe = CompiledRecipe> {
  readonly recipes: readonly Recipe[];
  readonly batches: readonly CompiledBatch[];
  /** Every paper that is stated, here or in a file that is used. */
  readonly papers: readonly Paper[];
  /** Every finding, of language, of folding and of batches, in order: file, offset, rule. */
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Compiles the envelopes of some files: what they mean, how each folds, what it measures, whether it will work.
 * A mistake in a recipe is a finding, never an exception. `made` makes one envelope: who keeps some can hand them out again.
 */
export function compile(
  inputs: readonly Input[],
  read: Reader,
  made: (envelope: Envelope) => CompiledRecipe = compileEnvelope,
): Compilation {
  const resolved = resolve(inputs, read);
  return compilationOf(inputs, resolved, resolved.envelopes.map(made));
}

/** As `compile`, for whom wants nothing but what there is to say. */
export function checkOnly(inputs: readonly Input[], read: Reader): Compilation<CheckedRecipe> {
  const resolved = resolve(inputs, read);
  return compilationOf(inputs, resolved, resolved.envelopes.map(checkEnvelope));
}

/** What files come to, once their envelopes are made. */
export function compilationOf<Recipe extends CheckedRecipe>(
  inputs: readonly Input[],
  { diagnostics, batches: stated, papers }: Pick<Resolved, 'diagnostics' | 'batches' | 'papers'>,
  recipes: readonly Recipe[],
): Compilation<Recipe> {
  const told = recipes.flatMap((recipe) => recipe.diagnostics);
  const batches = stated.map((batch) => compileBatch(batch, told));
  const all = [...diagnostics, ...told, ...batches.flatMap((batch) => batch.diagnostics)];
  return { recipes, batches, papers, diagnostics: inOrder(all, inputs) };
}

/** The findings about envelopes and batches that compiled: none of them keeps an envelope from being known. */
export const ownedFindings = ({
  recipes,
  batches,
}: Pick<Compilation<CheckedRecipe>, 'recipes' | 'batches'>): ReadonlySet<Diagnostic> =>
  new Set([...recipes, ...batches].flatMap(({ diagnostics }) => diagnostics));

/** Works out the envelopes of a batch, each on its paper. What is `told` of an envelope already is not said again. */
function compileBatch(batch: Batch, told: readonly Diagnostic[]): CompiledBatch {
  const orders = batch.orders.map((order) => ({ ...order, ...compileEnvelope(order.envelope) }));
  const messages = new Set(told.map(({ message }) => message));
  return { batch, orders, diagnostics: batchFindings(batch, orders, ({ message }) => messages.has(message)) };
}

/** Folds, measures and checks one envelope. */
export function compileEnvelope(envelope: Envelope): CompiledRecipe {
  const folding = fold(envelope);
  const facts = measure(envelope, folding);
  return { envelope, folding, facts, diagnostics: check(envelope, folding, facts) };
}

/** Finds what there is to say about an envelope. What it comes to is let go: of thousands it would fill the memory. */
export function checkEnvelope(envelope: Envelope): CheckedRecipe {
  const { diagnostics } = compileEnvelope(envelope);
  return { envelope, diagnostics };
}

/** An envelope, all the way but for the words: how grave what there is to say about it is. */
export function tryEnvelope(envelope: Envelope): Tried {
  const folding = fold(envelope);
  const facts = measure(envelope, folding);
  return { envelope, facts, severities: severitiesOf(envelope, folding, facts) };
}

/** Files in the order in which they were given, those that are only used after them by name; then offset, then rule. */
function inOrder(diagnostics: readonly Diagnostic[], inputs: readonly Input[]): readonly Diagnostic[] {
  const given = new Map(inputs.map(({ source }, index) => [source.name, index]));
  const file = ({ primary }: Diagnostic): number => given.get(primary.span.source.name) ?? inputs.length;
  return [...diagnostics].sort(
    (a, b) =>
      file(a) - file(b) ||
      byText(a.primary.span.source.name, b.primary.span.source.name) ||
      a.primary.span.start - b.primary.span.start ||
      byText(a.problem.name, b.problem.name),
  );
}
