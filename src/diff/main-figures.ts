import { FIGURES } from '../folding/figures.js';
import type { FigureChange, Recipe } from './difference.js';
import { alike } from './figures.js';

/** The figures that an envelope is known by: blank, marks and face. As changes from nothing. */
export const mainFigures = ({ facts }: Recipe): readonly FigureChange[] =>
  MAIN.flatMap((name): readonly FigureChange[] => {
    const values = FIGURES.get(name)?.read(facts) ?? [];
    const after = alike(values) ? values.slice(0, 1) : values;
    return after.every((value) => value === null)
      ? []
      : [{ name, dimension: 'length', before: [null], after }];
  });

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
