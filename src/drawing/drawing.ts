/*
 * drawing/: pictures of a blank as lists of lines and lettering in mm, each on a named layer.
 * In: a Folding (in the blank's frame) or boxes on a page (y up). Out: Drawings, for any emitter to convert.
 * Refuses to know: file formats, fonts (it is handed a measure of widths), and any decision about the envelope.
 */
import type { Path } from '../plane/path.js';
import type { Point } from '../plane/point.js';
import type { Span } from '../text/span.js';

/** What a mark means. How each layer is drawn: line-kinds.ts. */
export type Layer =
  /** The outline to cut: what remains of the blank after notches and tips. */
  | 'cut'
  /** The edges of the blank that trimming takes away. */
  | 'blank'
  /** Hatching on what trimming takes away. */
  | 'waste'
  /** Scores that bound the face, scored on the inside. */
  | 'score'
  /** The outer scores of a box. */
  | 'second-score'
  /** Scored from the other face: they fold away from the reader. */
  | 'odd-score'
  /** Where a score meets the blank's edge. */
  | 'mark'
  /** Hatching where the bottom flap and a side flap lie over each other and are glued. */
  | 'seam'
  /** Tape or glue, on the inside. */
  | 'glue'
  /** Where the show side may be decorated, addressed or stamped. */
  | 'zone'
  /** The part of the flap's zone for raised work: embossing, wax. */
  | 'raised-zone'
  /** The outline of a lining, and where it is folded. */
  | 'lining'
  | 'lining-fold'
  /** Edges of folded paper that are seen, and those that lie under other paper. */
  | 'edge'
  | 'hidden'
  /** Paper as a surface: its inside, its show side, and the card. */
  | 'inside'
  | 'show-side'
  | 'card'
  | 'dimension'
  /** Where two pages of a tiled drawing meet. */
  | 'join'
  /** Outlines of pages, in a plan of them. */
  | 'page'
  /** Bars and squares to measure. */
  | 'scale'
  /** A sample of a kind of line, in a key: nothing to cut or score. Drawn as its `like` says. */
  | 'sample'
  /** Hairlines that set a page in order. */
  | 'rule'
  | 'lettering';

export type Shape =
  /** A closed outline with true arcs. */
  | { readonly kind: 'path'; readonly path: Path }
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point }
  /** An open run of straight lines. */
  | { readonly kind: 'polyline'; readonly points: readonly Point[] }
  | Lettering;

/** One line of text; `at` is on its baseline. */
export interface Lettering {
  readonly kind: 'text';
  readonly text: string;
  readonly at: Point;
  /** The em, in mm. It stays when a drawing is scaled. */
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Counter-clockwise about `at`. */
  readonly angleDegrees: number;
  readonly weight: Weight;
}

export type Weight = 'regular' | 'bold';

/** A shape on a layer, and the place in the recipe that made it so. */
export interface Mark {
  readonly layer: Layer;
  readonly shape: Shape;
  readonly span: Span | null;
  /** Of a sample: the layer whose kind of line it shows. */
  readonly like?: Layer;
}

export type Drawing = readonly Mark[];

export const line = (layer: Layer, from: Point, to: Point, span: Span | null = null): Mark => ({
  layer,
  shape: { kind: 'line', from, to },
  span,
});

export const polyline = (layer: Layer, points: readonly Point[], span: Span | null = null): Mark => ({
  layer,
  shape: { kind: 'polyline', points },
  span,
});

/** A closed outline with true arcs. */
export const path = (layer: Layer, along: Path, span: Span | null = null): Mark => ({
  layer,
  shape: { kind: 'path', path: along },
  span,
});

/** A closed polygon. */
export function outline(layer: Layer, corners: readonly Point[], span: Span | null = null): Mark {
  const [start = { x: 0, y: 0 }, ...others] = corners;
  return path(layer, { start, stretches: [...others, start].map((to) => ({ kind: 'line', to })) }, span);
}

/** A rectangle with its lower left corner at (x, y). */
export const rectangle = (layer: Layer, x: number, y: number, width: number, height: number): Mark =>
  outline(layer, [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ]);

/** A line of text, upright, from its left end unless said otherwise. */
export const lettering = (
  text: string,
  at: Point,
  size: number,
  how: Partial<Pick<Lettering, 'anchor' | 'angleDegrees' | 'weight'>> = {},
  layer: Layer = 'lettering',
): Mark => ({
  layer,
  shape: { kind: 'text', text, at, size, anchor: 'start', angleDegrees: 0, weight: 'regular', ...how },
  span: null,
});
