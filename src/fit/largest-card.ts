import { floorToStep } from '../measure/ruler.js';
import { fits } from '../measure/slack.js';
import { MM_PER, type Units } from '../measure/unit.js';
import type { Size } from '../recipe/recipe.js';
import { type Try, type Tried, passes, recipeText, type Wish } from './wish.js';

/** The ruler's step where nothing is said of it, in mm. */
export const STEP: Readonly<Record<Units, number>> = { mm: 0.5, cm: 0.5, in: MM_PER.in / 16 };

/** What is asked for: the greatest card of a shape whose envelope a sheet holds. */
export interface Asked {
  readonly units: Units;
  readonly sheet: Size;
  /** Longer side to shorter, 1 or more. */
  readonly ratio: number;
  readonly depth: number;
}

/** The greatest card that was found, and its envelope. */
export interface Largest {
  readonly wish: Wish;
  readonly tried: Tried;
}

/** The card of a shape whose longer side is so many steps; the shorter one is on the ruler too, and never longer than the shape says. */
export function wishOf({ units, sheet, ratio, depth }: Asked, steps: number): Wish {
  const step = STEP[units];
  const width = steps * step;
  const card = { width, height: floorToStep(width / ratio, step) };
  return { units, card, sheet, ...(depth > 0 ? { depth } : {}) };
}

/**
 * The largest card of a shape, to the ruler's step, whose envelope passes every check on a sheet; null where none does. One step
 * more fails a check: the blank grows with the card, so those that the sheet holds are found by halving, and from the largest of
 * them the first that passes all checks is taken.
 */
export function largestCard(asked: Asked, attempt: Try): Largest | null {
  const side = Math.min(asked.sheet.width, asked.sheet.height);
  const at = (steps: number): Largest | null => {
    const wish = wishOf(asked, steps);
    const tried = wish.card.height > 0 ? attempt(recipeText(wish)) : null;
    return tried && { wish, tried };
  };
  const isHeld = (steps: number): boolean => {
    const found = at(steps);
    return found === null || fits(found.tried.facts.blank.width, side);
  };
  let [low, high] = [0, Math.ceil((side * Math.SQRT2) / STEP[asked.units])];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (isHeld(middle)) low = middle;
    else high = middle - 1;
  }
  for (let steps = low; steps > 0; steps--) {
    const found = at(steps);
    if (found && passes(found.tried)) return found;
  }
  return null;
}
