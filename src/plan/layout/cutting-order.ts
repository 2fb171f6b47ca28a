import type { Size } from '../../recipe/recipe.js';
import { type Division, type Layout, NOISE, remainderOf, turnedIf, withSide, type Wanted } from './layout.js';

/** What a cut leaves: so many parts of a size, and what becomes of each. */
export interface Outcome {
  readonly size: Size;
  readonly count: number;
  /** A piece that is wanted (its index), a part to cut on, or an offcut. */
  readonly is:
    | { readonly kind: 'piece'; readonly of: number }
    | { readonly kind: 'part'; readonly step: number }
    | { readonly kind: 'rest' };
}

/** One setting of the ruler or the back gauge, for all equal parts of a sheet that are cut alike. */
export interface Step {
  /** From 1 on. */
  readonly number: number;
  /** What is cut up, and how many of it lie on one sheet. */
  readonly part: Size;
  readonly parts: number;
  readonly divides: Division['divides'];
  /** The setting, in mm: from the edge to the cut. */
  readonly at: number;
  /** Cuts in each of the parts. */
  readonly cuts: number;
  readonly leaves: readonly Outcome[];
}

interface Open {
  readonly size: Size;
  readonly layout: Division;
  count: number;
}

/**
 * The cuts of one sheet in the order in which they are made, the largest parts first: each cut runs from edge to edge of a part that
 * an earlier one made. Equal parts that are cut alike are one step.
 */
export function cuttingOrder(layout: Layout, sheet: Size, wanted: readonly Wanted[]): readonly Step[] {
  const open: Open[] = layout.kind === 'division' ? [{ size: sheet, layout, count: 1 }] : [];
  const numbers = new Map(open.map((part, index) => [keyOf(part), index]));
  const enter = (size: Size, part: Division, count: number): number => {
    const next = { size, layout: part, count };
    const known = numbers.get(keyOf(next));
    const waiting = known === undefined ? undefined : open[known];
    if (known !== undefined && waiting) {
      waiting.count += count;
      return known;
    }
    numbers.set(keyOf(next), open.length);
    return open.push(next) - 1;
  };
  const steps: Step[] = [];
  for (let index = 0; index < open.length; index++) {
    const { size, layout: division, count } = open[index] as Open;
    numbers.delete(keyOf(open[index] as Open));
    const { divides, at, times, each, remainder } = division;
    const outcome = (part: Layout, partSize: Size, number: number): Outcome => {
      if (part.kind === 'division')
        return {
          size: partSize,
          count: number,
          is: { kind: 'part', step: enter(partSize, part, number) + 1 },
        };
      if (part.kind === 'rest') return { size: partSize, count: number, is: { kind: 'rest' } };
      const piece = wanted[part.of] ?? partSize;
      return { size: turnedIf(piece, part.turned), count: number, is: { kind: 'piece', of: part.of } };
    };
    steps.push({
      number: index + 1,
      part: size,
      parts: count,
      divides,
      at,
      cuts: remainder === null ? times - 1 : times,
      leaves: [
        outcome(each, withSide(size, divides, at), times * count),
        ...(remainder === null ? [] : [outcome(remainder, remainderOf(size, division), count)]),
      ],
    });
  }
  return steps;
}

const keyOf = ({ size, layout }: Pick<Open, 'size' | 'layout'>): string =>
  `${Math.round(size.width / NOISE)} ${Math.round(size.height / NOISE)} ${JSON.stringify(layout)}`;
