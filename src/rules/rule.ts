/*
 * rules/: what must hold for a folded envelope, one rule a file.
 * In: an envelope, its folding and its facts. Out: findings, each with its numbers and a remedy that was tried.
 * Refuses to know: how a recipe is read, how a finding is printed, anything drawn.
 */
import type { Problem, Report } from '../diagnostics/problem.js';
import type { Facts } from '../folding/facts.js';
import type { Folding } from '../folding/folding.js';
import type { Envelope } from '../recipe/recipe.js';
import type { Remedy } from './remedy.js';

/** What a rule reads. */
export interface Subject {
  readonly envelope: Envelope;
  readonly folding: Folding;
  readonly facts: Facts;
}

/** What a rule has found: a report whose help is still to be chosen from its remedies. */
export interface Finding extends Omit<Report, 'help' | 'fix'> {
  readonly problem: Problem;
  /** Which of a rule's possible findings it is (a flap, a margin, an expectation): the same after a remedy is tried. */
  readonly about: string;
  /** Ways to mend it, the best first; the first two that prove to serve are offered. */
  readonly remedies: readonly Remedy[];
  /** What to do where no statement of the envelope's own can mend it. */
  readonly advice?: string;
  /** True where the first remedy is surely what was meant, so that it may be applied unasked. */
  readonly sure?: boolean;
}

/** A rule: the problem on top, what explains it away, and the check. */
export interface Rule {
  readonly problem: Problem;
  /** Problems of earlier rules whose finding is the same mistake: after them this rule stays quiet. */
  readonly quietAfter: readonly string[];
  /** `found` names the problems that earlier rules have reported. */
  readonly check: (subject: Subject, found: ReadonlySet<string>) => readonly Finding[];
}
