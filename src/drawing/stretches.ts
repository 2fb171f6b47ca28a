/** A stretch of a long thing, in mm. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * The fewest stretches, each at most `longest` long and each overlapping the next by `overlap`, that cover a length.
 * All but the last are as long as they may be.
 */
export function stretches(length: number, longest: number, overlap: number): readonly Stretch[] {
  const step = longest - overlap;
  const count = Math.max(1, Math.ceil((length - overlap) / step - 1e-9));
  return Array.from({ length: count }, (_, index) => ({
    from: index * step,
    to: Math.min(index * step + longest, Math.max(length, longest)),
  }));
}
