import type { Point } from './point.js';

/** One stretch of a path, from where the last one ended. An arc turns counter-clockwise unless `clockwise`. */
export type Stretch =
  | { readonly kind: 'line'; readonly to: Point }
  | { readonly kind: 'arc'; readonly to: Point; readonly centre: Point; readonly clockwise: boolean };

/** A closed outline of lines and true arcs, counter-clockwise as a whole. It ends where it starts. */
export interface Path {
  readonly start: Point;
  readonly stretches: readonly Stretch[];
}
