import type { Facts } from '../folding/facts.js';
import { FIGURES } from '../folding/figures.js';
import { NEARLY, sameLength } from '../measure/slack.js';
import type { ExpectDimension } from '../recipe/expect-names.js';
import type { FigureChange } from './difference.js';

type Values = FigureChange['before'];

/** The figures that came out otherwise, in the order of recipe/expect-names.ts. */
export function figures(before: Facts, after: Facts): readonly FigureChange[] {
  return [...FIGURES].flatMap(([name, { dimension, read }]): readonly FigureChange[] => {
    const [was, is] = [read(before), read(after)];
    if (was.every((value, index) => same(value, is[index] ?? null, NOISE[dimension]))) return [];
    const shown = alike(was) && alike(is) ? 1 : 2;
    return [
      {
        name,
        dimension: dimension === 'number' ? 'count' : dimension,
        before: was.slice(0, shown),
        after: is.slice(0, shown),
      },
    ];
  });
}

/** What comes from arithmetic alone. Bare patches are found on a grid, which counts what is smaller as nothing. */
const NOISE: Readonly<Record<ExpectDimension, number>> = {
  length: NEARLY,
  area: 0.01,
  mass: NEARLY,
  number: NEARLY,
};

const same = (one: number | null, other: number | null, noise: number): boolean =>
  one === null || other === null ? one === other : Math.abs(one - other) <= noise;

/** Whether both sides of an envelope have one value. */
export const alike = ([one = null, other = one]: Values): boolean =>
  one === null || other === null ? one === other : sameLength(one, other);
