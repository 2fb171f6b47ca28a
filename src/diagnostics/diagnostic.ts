/*
 * diagnostics/: what the compiler has to say about a recipe, as plain values, and how it is printed.
 * In: problems reported by every stage. Out: text for people, JSON for machines.
 * Refuses to know: which stage found a problem, files, terminals, exit codes.
 */
import type { Edit } from '../text/edit.js';
import type { Span } from '../text/span.js';
import type { Problem } from './problem.js';

/** An error stops a build, a warning wants a look (and fails `--strict`), a note only informs. */
export type Severity = 'error' | 'warning' | 'note';

/** A place in a text with a few words about it. */
export interface Label {
  readonly span: Span;
  readonly text: string;
}

/** One finding: a sentence, the smallest place to change, the numbers and the remedy. */
export interface Diagnostic {
  readonly problem: Problem;
  readonly severity: Severity;
  /** One sentence, without a full stop, that names the author's own thing and what is wrong with it. */
  readonly message: string;
  /** The smallest span to change, with the words under it (may be empty). */
  readonly primary: Label;
  /** Other places that matter: the first of a repetition, the style a value came from. */
  readonly related: readonly Label[];
  /** Measured, limit, difference, and where the limit comes from, in the author's units. */
  readonly why: string | null;
  /** The actual edit that mends it. */
  readonly help: string | null;
  /** Edits that surely mend it, if there are such. */
  readonly fix: readonly Edit[] | null;
}
