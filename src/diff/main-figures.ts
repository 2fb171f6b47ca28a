import { allFigures } from './all-figures.js';
import type { FigureChange, Recipe } from './difference.js';

/** The figures that an envelope is known by: blank, marks and face. As changes from nothing. */
export function mainFigures({ facts }: Recipe): readonly FigureChange[] {
  const figures = allFigures(facts);
  return MAIN.flatMap((wanted) => figures.filter(({ name }) => name === wanted));
}

const MAIN = [
  'blank',
  'side-mark',
  'seal-mark',
  'bottom-mark',
  'second-side-mark',
  'second-seal-mark',
  'second-bottom-mark',
  'face-width',
  'face-height',
] as const;
