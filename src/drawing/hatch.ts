import type { Point, Segment } from '../plane/point.js';

/**
 * Parallel lines inside a closed outline of any shape, `spacing` mm apart, rising at 45°. They lie on one lattice, so
 * that neighbouring patches match.
 */
export function hatch(outline: readonly Point[], spacing: number): readonly Segment[] {
  // In (along, across) a hatch line is level.
  const corners = outline.map(({ x, y }) => ({ along: (x + y) / Math.SQRT2, across: (y - x) / Math.SQRT2 }));
  const heights = corners.map(({ across }) => across);
  const first = Math.ceil(Math.min(...heights) / spacing);
  const last = Math.floor(Math.max(...heights) / spacing);
  const segments: Segment[] = [];
  for (let step = first; step <= last; step++) {
    const across = step * spacing;
    const crossings = corners.flatMap((here, index) => {
      const next = corners[(index + 1) % corners.length] ?? here;
      if (here.across < across === next.across < across) return [];
      const fraction = (across - here.across) / (next.across - here.across);
      return [here.along + (next.along - here.along) * fraction];
    });
    crossings.sort((a, b) => a - b);
    for (let index = 0; index + 1 < crossings.length; index += 2) {
      const [from, to] = [crossings[index] ?? 0, crossings[index + 1] ?? 0];
      segments.push({ from: back(from, across), to: back(to, across) });
    }
  }
  return segments;
}

/** The same, falling at 45°. */
export const counterHatch = (outline: readonly Point[], spacing: number): readonly Segment[] =>
  hatch(outline.map(mirrored), spacing).map(({ from, to }) => ({ from: mirrored(from), to: mirrored(to) }));

const mirrored = ({ x, y }: Point): Point => ({ x: -x, y });

const back = (along: number, across: number): Point => ({
  x: (along - across) / Math.SQRT2,
  y: (along + across) / Math.SQRT2,
});
