/*
 * plane/: geometry that has never heard of paper.
 * In and out: points, segments, polygons (counter-clockwise, not closed by repeating the first point), paths.
 * Refuses to know: envelopes, units, drawings.
 */
export interface Point {
  readonly x: number;
  readonly y: number;
}
