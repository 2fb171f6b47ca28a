import type { Envelope } from '../recipe/recipe.js';
import { asMade } from './as-made.js';
import { closedFlap } from './closed-flap.js';
import { closure } from './closure.js';
import { cover } from './cover.js';
import { creases } from './creases.js';
import { eachFlap, type Folding } from './folding.js';
import { glueLines } from './glue.js';
import { liner } from './liner.js';
import { blankOutline, cutOutline, flapRegions } from './outline.js';
import { pieces } from './pieces.js';

/** Folds one envelope: rounds it to the ruler, cuts its outline, folds its pieces in order, and looks what is bare. */
export function fold(envelope: Envelope): Folding {
  const made = asMade(envelope);
  const caliper = envelope.caliper.value;
  const regions = flapRegions(made, caliper);
  const outline = cutOutline(made, regions, caliper);
  const folded = pieces(made, outline);
  const closedFlaps = eachFlap((flap) => closedFlap(made, flap, regions[flap]));
  const closed = closure(envelope, made, folded);
  const glue = glueLines(envelope, made, closedFlaps, closed);
  return {
    made,
    blankOutline: blankOutline(made),
    flapRegions: regions,
    cutOutline: outline,
    creases: creases(made, caliper),
    pieces: folded,
    closedFlaps,
    closure: closed.length,
    centreSeam: closed.centreSeam,
    glue,
    liner: liner(envelope, made, glue),
    ...cover({ made, pieces: folded, closedFlaps }),
  };
}
