import type { Units } from '../measure/unit.js';
import type { Size } from '../recipe/recipe.js';
import type { PageName } from './emitter.js';

type PaperName = Exclude<PageName, 'fit'>;

const INCH = 25.4;

/** Sheets upright, in mm: US sizes in whole and half inches (ASME Y14.1, common practice for legal), A sizes ISO 216. */
const PAPER_SIZES: Readonly<Record<PaperName, Size>> = {
  letter: { width: 8.5 * INCH, height: 11 * INCH },
  legal: { width: 8.5 * INCH, height: 14 * INCH },
  tabloid: { width: 11 * INCH, height: 17 * INCH },
  a4: { width: 210, height: 297 },
  a3: { width: 297, height: 420 },
};

/** A printer's margin beyond this, in mm, would leave no room for a drawing or a scale bar on the smallest sheet. */
export const WIDEST_MARGIN = 35;

/** The printer's sheet upright: what was asked for, else letter where the recipe measures in inches and A4 elsewhere. */
export const paperSize = (paper: PaperName | null, units: Units): Size =>
  PAPER_SIZES[paper ?? (units === 'in' ? 'letter' : 'a4')];
