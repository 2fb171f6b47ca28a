import { between, distance, type Segment, turn } from './point.js';

/** What lies this near a line lies on it, and stretches no longer than this are none, in the unit of the points. */
const ON_LINE = 1e-4;

/** The stretches of a segment along which none of the others runs. */
export function apartFrom({ from, to }: Segment, others: readonly Segment[]): readonly Segment[] {
  const length = distance(from, to);
  if (length < ON_LINE) return [];
  const along = (at: Segment['from']): number =>
    ((at.x - from.x) * (to.x - from.x) + (at.y - from.y) * (to.y - from.y)) / length;
  const onLine = (at: Segment['from']): boolean => Math.abs(turn(from, to, at)) < ON_LINE * length;
  const taken = others
    .filter((other) => onLine(other.from) && onLine(other.to))
    .map((other) => [along(other.from), along(other.to)].sort((a, b) => a - b) as [number, number])
    .sort((a, b) => a[0] - b[0]);
  const left: Segment[] = [];
  let start = 0;
  for (const [begin, end] of [...taken, [length, length] as const]) {
    const stop = Math.min(begin, length);
    if (stop - start > ON_LINE)
      left.push({ from: between(from, to, start / length), to: between(from, to, stop / length) });
    start = Math.max(start, end);
  }
  return left;
}
