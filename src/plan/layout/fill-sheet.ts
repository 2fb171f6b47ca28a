import type { Size } from '../../recipe/recipe.js';
import { divide } from './division.js';
import { type Division, type Layout, NOISE, timesIn, turnedIf, type Wanted } from './layout.js';

/** Which piece starts a strip, and how the strip lies. */
interface Start {
  readonly of: number;
  readonly turned: boolean;
  readonly divides: Division['divides'];
}

/** How strips are chosen while a sheet is filled. */
export interface Manner {
  /** Pieces in the order in which they are thought of; those that come first are taken where they fit. */
  readonly order: readonly number[];
  readonly strips: keyof typeof STRIPS;
  /** How the sheet's first strip is to start; null: as all others. */
  readonly start: Start | null;
}

/** Which of the ways to lay a strip is taken: the one of which this is least. */
const STRIPS = {
  /** As little as possible left at the strip's end. */
  snug: (region: Size, piece: Size, divides: Division['divides']): number => {
    const along = divides === 'height' ? 'width' : 'height';
    return (region[along] - timesIn(region[along], piece[along]) * piece[along]) * piece[divides];
  },
  /** As narrow a strip as possible. */
  narrow: (_: Size, piece: Size, divides: Division['divides']): number => piece[divides],
  /** Strips across the longer side. */
  across: (region: Size, piece: Size, divides: Division['divides']): number =>
    -region[divides] + piece[divides] / (1 + region.width + region.height),
};

export const STRIP_MANNERS = Object.keys(STRIPS) as readonly (keyof typeof STRIPS)[];

/**
 * Fills one rectangle with strips of pieces, one after the other, and what is left of strips and sheet in the same way.
 * Takes at most `left[i]` of each piece, and counts down what it takes.
 */
export function fillSheet(wanted: readonly Wanted[], left: number[], sheet: Size, manner: Manner): Layout {
  const fill = (region: Size, given: Start | null): Layout => {
    const start = given ?? choose(region);
    const piece = start && wanted[start.of];
    if (!start || !piece) return { kind: 'rest' };
    const { of, turned, divides } = start;
    const along = divides === 'height' ? 'width' : 'height';
    const lying = turnedIf(piece, turned);
    const before = [...left];
    const times = Math.min(left[of] ?? 0, timesIn(region[along], lying[along]));
    left[of] = (left[of] ?? 0) - times;
    const stripSize = { ...region, [divides]: lying[divides] };
    const strip = divide(
      stripSize,
      { divides: along, at: lying[along], times },
      { kind: 'piece', of, turned },
      (end) => fill(end, null),
    );
    const strips = Math.min(timesIn(region[divides], lying[divides]), 1 + repeats(before, left));
    for (let index = 0; index < left.length; index++)
      left[index] = (left[index] ?? 0) - ((before[index] ?? 0) - (left[index] ?? 0)) * (strips - 1);
    return divide(region, { divides, at: lying[divides], times: strips }, strip, (beyond) =>
      fill(beyond, null),
    );
  };
  const choose = (region: Size): Start | null => {
    for (const of of manner.order) {
      const piece = wanted[of];
      if (!piece || (left[of] ?? 0) === 0) continue;
      const ways = waysToLay(piece, of, region);
      if (ways.length === 0) continue;
      const cost = ({ turned, divides }: Start): number =>
        STRIPS[manner.strips](region, turnedIf(piece, turned), divides);
      return ways.reduce((least, way) => (cost(way) < cost(least) - NOISE ? way : least));
    }
    return null;
  };
  return fill(sheet, manner.start);
}

/** The ways in which a strip of a piece may start in a region: upright or turned, along either side. */
export const waysToLay = (piece: Size, of: number, region: Size): readonly Start[] =>
  (Math.abs(piece.width - piece.height) <= NOISE ? [false] : [false, true])
    .filter((turned) => holds(region, turnedIf(piece, turned)))
    .flatMap((turned) => (['height', 'width'] as const).map((divides): Start => ({ of, turned, divides })));

const holds = (region: Size, piece: Size): boolean =>
  piece.width <= region.width + NOISE && piece.height <= region.height + NOISE;

/** How often what was taken can be taken again. */
export const repeats = (before: readonly number[], left: readonly number[]): number =>
  left.reduce((least, count, index) => {
    const taken = (before[index] ?? 0) - count;
    return taken > 0 ? Math.min(least, Math.floor(count / taken)) : least;
  }, Infinity);
