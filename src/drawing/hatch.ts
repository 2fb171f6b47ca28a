import type { Point, Segment } from '../plane/point.js';

/** The usual slope of hatching: rising to the right. */
export const RISING = 45;

/**
 * Parallel lines inside a closed outline of any shape, `spacing` mm apart, at an angle counter-clockwise from level. They lie
 * on one lattice, so that neighbouring patches match.
 */
export function hatch(outline: readonly Point[], spacing: number, degrees = RISING): readonly Segment[] {
  const angle = (degrees * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  // In (along, across) a hatch line is level.
  const corners = outline.map(({ x, y }) => ({
    along: x * cosine + y * sine,
    across: y * cosine - x * sine,
  }));
  const back = (along: number, across: number): Point => ({
    x: along * cosine - across * sine,
    y: along * sine + across * cosine,
  });
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
