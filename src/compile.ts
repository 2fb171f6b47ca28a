import type { Diagnostic } from './diagnostics/diagnostic.js';
import type { Facts } from './folding/facts.js';
import type { Folding } from './folding/folding.js';
import type { Envelope } from './recipe/recipe.js';

/** One envelope, all the way: what was meant, how it folds, its numbers, and what there is to say about it. */
export interface CompiledRecipe {
  readonly envelope: Envelope;
  readonly folding: Folding;
  readonly facts: Facts;
  /** The findings about this envelope's folding (those of the language are in the Compilation's list too). */
  readonly diagnostics: readonly Diagnostic[];
}

/** What a set of files comes to. */
export interface Compilation {
  readonly recipes: readonly CompiledRecipe[];
  /** Every finding, of language and of folding, in order: file, offset, rule. */
  readonly diagnostics: readonly Diagnostic[];
}
