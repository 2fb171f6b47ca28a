import type { Envelope } from '../recipe/recipe.js';
import { asMade } from './as-made.js';
import { closure } from './closure.js';
import { bare } from './cover.js';
import { creases } from './creases.js';
import type { Folding } from './folding.js';
import { glueLines } from './glue.js';
import { liner } from './liner.js';
import { blankOutline, cutOutline, flapRegions } from './outline.js';
import { pieces } from './pieces.js';

/** Folds one envelope: rounds it to the ruler, cuts its outline, folds its pieces in order, and looks what is bare. */
export function fold(envelope: Envelope): Folding {
  const made = asMade(envelope);
  const caliper = envelope.caliper.value;
  const cut = { made, flapRegions: flapRegions(made, caliper) };
  const outline = cutOutline(cut, caliper);
  const folded = pieces(made, outline);
  const closed = closure(envelope, made, folded);
  const glue = glueLines(envelope, cut, closed);
  return {
    ...cut,
    blankOutline: blankOutline(made),
    cutOutline: outline,
    creases: creases(made, caliper),
    pieces: folded,
    closure: closed.length,
    centreSeam: closed.centreSeam,
    glue,
    liner: liner(envelope, made, glue),
    bare: bare(made, folded),
  };
}
