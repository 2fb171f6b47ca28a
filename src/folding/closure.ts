import { common, type Interval, lengthOf, sectionAt, unionLength } from '../plane/section.js';
import type { Envelope } from '../recipe/recipe.js';
import { blankCorners } from './blank.js';
import type { AsMade, FlapName, Folding } from './folding.js';
import { closureLoss } from './worst-case.js';

/** How the closed seal flap lies on glued paper, along the centre line through its tip. */
export interface Closure {
  /** In mm; 0 where it reaches none. */
  readonly length: number;
  /** The side flaps are glued to each other because the bottom flap alone gives too little. */
  readonly centreSeam: boolean;
}

/** Paper that a line of tape or glue needs besides its own width: about 1 mm on either side (common practice). */
export const TAPE_CLEARANCE = 2;

/**
 * The seal flap's closure, on the upright line through its tip: over the bottom flap, and where that is too little in the worst
 * case, over joined sides too.
 */
export function closure(
  { tape, tolerance }: Envelope,
  made: AsMade,
  closedFlaps: Folding['closedFlaps'],
): Closure {
  const { x } = blankCorners(made.blank).seal;
  const alongCentre = (flap: FlapName): Interval | null => sectionAt(closedFlaps[flap], x);
  const seal = alongCentre('seal');
  const overBottom = common(seal, alongCentre('bottom'));
  const needed = tape.value + TAPE_CLEARANCE + closureLoss(tolerance.value, cutTips(made));
  if (lengthOf(overBottom) >= needed) return { length: lengthOf(overBottom), centreSeam: false };
  const overSides = common(seal, common(alongCentre('left'), alongCentre('right')));
  const length = unionLength(overBottom, overSides);
  return { length, centreSeam: length > lengthOf(overBottom) };
}

/** How many of the two tips that decide the closure are cut. */
export const cutTips = ({ tips }: AsMade): number =>
  [tips.seal, tips.bottom].filter(({ cut }) => cut > 0).length;
