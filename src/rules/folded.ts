import { fold } from '../folding/fold.js';
import { measure } from '../folding/measure.js';
import type { Envelope } from '../recipe/recipe.js';
import type { Subject } from './rule.js';

/** An envelope with its folding and its facts, as rules read it. */
export function folded(envelope: Envelope): Subject {
  const folding = fold(envelope);
  return { envelope, folding, facts: measure(envelope, folding) };
}
