import { clip, halfPlanesOf } from '../plane/clip.js';
import { counterClockwise, type Polygon } from '../plane/polygon.js';
import type { Folding, GlueLine } from './folding.js';
import { foldOver } from './pieces.js';

/** Two flaps that a strip holds together, and the paper of both that lies over each other there. Polygons counter-clockwise. */
export interface Seam {
  readonly strip: GlueLine;
  /** On the back of the closed envelope, in the blank's frame. Convex. */
  readonly closed: Polygon;
  /** The same paper on the flat blank: of the flap that carries the strip, and of the one that it is pressed on. */
  readonly flat: { readonly on: Polygon; readonly onto: Polygon };
}

/** The seams as areas, one for each strip. A lower seam is a band as wide as the marks on that edge pass each other. */
export const seams = (folding: Folding): readonly Seam[] =>
  folding.glue.map((strip) => {
    const closed = clip(folding.closedFlaps[strip.on], halfPlanesOf(folding.closedFlaps[strip.onto]));
    const unfolded = (flap: GlueLine['on']): Polygon =>
      counterClockwise(closed.map((at) => foldOver(folding.made, flap, at)));
    return { strip, closed, flat: { on: unfolded(strip.on), onto: unfolded(strip.onto) } };
  });
