import type { Size } from '../../recipe/recipe.js';
import type { Job, PageName } from '../emitter.js';

const INCH = 25.4;

/** Sheets upright, in mm: US sizes in whole and half inches (ASME Y14.1, common practice for legal), A sizes ISO 216. */
const PAGE_SIZES: Readonly<Record<Exclude<PageName, 'fit'>, Size>> = {
  letter: { width: 8.5 * INCH, height: 11 * INCH },
  legal: { width: 8.5 * INCH, height: 14 * INCH },
  tabloid: { width: 11 * INCH, height: 17 * INCH },
  a4: { width: 210, height: 297 },
  a3: { width: 297, height: 420 },
};

/** The printer's sheet upright, or null: one page as large as it takes. */
export function pageSize(page: PageName | null, { envelope }: Job): Size | null {
  const name = page ?? (envelope.units === 'in' ? 'letter' : 'a4');
  return name === 'fit' ? null : PAGE_SIZES[name];
}

export const turned = ({ width, height }: Size): Size => ({ width: height, height: width });
