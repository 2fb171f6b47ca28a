import { contains } from './contains.js';
import { between, distance, type Segment, turn } from './point.js';
import { edgesOf, type Polygon } from './polygon.js';

/** A segment in the stretches that no polygon covers, and those that one covers, in order. */
export interface Parts {
  readonly seen: readonly Segment[];
  readonly hidden: readonly Segment[];
}

/** What lies this near a line lies on it, and shorter stretches are none, in the unit of the points. */
const ON_EDGE = 1e-6;

/** Divides a segment where it passes under polygons of any shape. Along an outline it is seen. */
export function hiddenParts(segment: Segment, over: readonly Polygon[]): Parts {
  const { from, to } = segment;
  const stops = [0, 1, ...over.flatMap((polygon) => crossings(segment, polygon))].sort((a, b) => a - b);
  const seen: Segment[] = [];
  const hidden: Segment[] = [];
  let last: Segment[] | null = null;
  stops.slice(1).forEach((stop, index) => {
    const start = stops[index] ?? 0;
    if ((stop - start) * distance(from, to) < ON_EDGE) return;
    const middle = between(from, to, (start + stop) / 2);
    const kind = over.some((polygon) => contains(polygon, middle)) ? hidden : seen;
    const part = { from: between(from, to, start), to: between(from, to, stop) };
    const open = last === kind ? kind.pop() : undefined;
    kind.push(open ? { from: open.from, to: part.to } : part);
    last = kind;
  });
  return { seen, hidden };
}

/** Where a segment meets a polygon's edges, as fractions of the way along it. */
function crossings({ from, to }: Segment, polygon: Polygon): readonly number[] {
  const slack = ON_EDGE * distance(from, to);
  const found: number[] = [];
  for (const { from: here, to: next } of edgesOf(polygon)) {
    const [a, b] = [turn(from, to, here), turn(from, to, next)];
    if ((a > slack && b > slack) || (a < -slack && b < -slack)) continue;
    const start = turn(here, next, from);
    const fraction = start / (start - turn(here, next, to));
    if (fraction > 0 && fraction < 1) found.push(fraction);
  }
  return found;
}
