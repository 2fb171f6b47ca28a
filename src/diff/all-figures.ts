import type { Facts } from '../folding/facts.js';
import { FIGURES } from '../folding/figures.js';
import type { FigureChange } from './difference.js';
import { alike } from './figures.js';

/** Every figure that an envelope has, as a change from nothing, in the order of recipe/expect-names.ts. */
export const allFigures = (facts: Facts): readonly FigureChange[] =>
  [...FIGURES].flatMap(([name, { dimension, read }]): readonly FigureChange[] => {
    const values = read(facts);
    if (values.every((value) => value === null)) return [];
    const after = alike(values) ? values.slice(0, 1) : values;
    return [{ name, dimension: dimension === 'number' ? 'count' : dimension, before: [null], after }];
  });
