/*
 * plan/: many envelopes at once: which sheets to take, how to cut them up, what it comes to.
 * In: a batch and its envelopes with their numbers. Out: a Plan, and findings where something cannot be cut.
 * Refuses to know: how a plan is printed or drawn.
 */
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Facts } from '../folding/facts.js';
import type { Batch, Ordered } from '../recipe/batch.js';

/** An order with what becomes of its envelope on the paper that it is cut from. */
export interface CompiledOrder extends Ordered {
  readonly facts: Facts;
  readonly diagnostics: readonly Diagnostic[];
}

/** A batch with what there is to say about it. */
export interface CompiledBatch {
  readonly batch: Batch;
  readonly orders: readonly CompiledOrder[];
  readonly diagnostics: readonly Diagnostic[];
}
