/*
 * plan/layout/: pieces on sheets, so that every cut runs from edge to edge.
 * In: sizes and counts in mm, and a sheet. Out: layouts as trees of cuts, how many sheets of each, and a lower bound.
 * Refuses to know: what the pieces are for, and what a sheet costs.
 */
import type { Size } from '../../recipe/recipe.js';

/** Pieces of one size; they may be turned by 90°. */
export interface Wanted extends Size {
  readonly count: number;
}

/**
 * How a rectangle is cut up. A rectangle without a layout of its own knows its size from the cuts that made it.
 * `of` is an index into the pieces wanted.
 */
export type Layout =
  | { readonly kind: 'piece'; readonly of: number; readonly turned: boolean }
  | { readonly kind: 'rest' }
  | Division;

/** A rectangle cut `times` at the same setting `at`, in mm: so many equal parts, and what remains beyond the last. */
export interface Division {
  readonly kind: 'division';
  /** The side that the parts share out: its cuts run square to it. */
  readonly divides: 'width' | 'height';
  readonly at: number;
  readonly times: number;
  readonly each: Layout;
  /** Null where nothing remains: then the last part needs no cut. */
  readonly remainder: Layout | null;
}

/** Some sheets that are all cut alike. */
export interface Cutting {
  readonly sheets: number;
  readonly layout: Layout;
}

/** Numeric noise, in mm. */
export const NOISE = 1e-6;

/** How often a length holds a part. */
export const timesIn = (length: number, part: number): number => Math.floor((length + NOISE) / part);

export const turnedIf = ({ width, height }: Size, turned: boolean): Size =>
  turned ? { width: height, height: width } : { width, height };

/** A rectangle with one side replaced. */
export const withSide = (size: Size, side: Division['divides'], length: number): Size => ({
  ...size,
  [side]: length,
});

/** The size of what remains of a rectangle after the parts of a division. */
export const remainderOf = (
  size: Size,
  { divides, at, times }: Omit<Division, 'each' | 'remainder' | 'kind'>,
): Size => withSide(size, divides, size[divides] - at * times);

/** How many cuts a layout takes, all parts counted. */
export const cutsOf = (layout: Layout): number =>
  layout.kind === 'division'
    ? layout.times * (1 + cutsOf(layout.each)) + (layout.remainder === null ? -1 : cutsOf(layout.remainder))
    : 0;

/** How many pieces of each kind a layout yields, by index. */
export function piecesOf(layout: Layout, kinds: number): number[] {
  const counts = Array.from({ length: kinds }, () => 0);
  const count = (part: Layout, times: number): void => {
    if (part.kind === 'piece') counts[part.of] = (counts[part.of] ?? 0) + times;
    if (part.kind !== 'division') return;
    count(part.each, times * part.times);
    if (part.remainder) count(part.remainder, times);
  };
  count(layout, 1);
  return counts;
}
