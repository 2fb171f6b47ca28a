import { bounds } from '../../plane/polygon.js';
import type { Size } from '../../recipe/recipe.js';
import { segmentsOf } from '../box.js';
import type { Drawing } from '../drawing.js';
import { place } from '../place.js';
import type { Pen } from './stage.js';

/** A drawing at its scale on the page, from (0, 0) to its size, in mm. */
export interface Picture extends Size {
  readonly drawing: Drawing;
}

export function pictureOf(draw: (pen: Pen) => Drawing, pen: Pen): Picture {
  const drawing = place(draw(pen), { scale: pen.scale });
  const { x, y, width, height } = boxOf(drawing);
  return { drawing: place(drawing, { x: -x, y: -y }), width, height };
}

/** Hatching at this scale is quick to draw. */
const SMALL = 0.05;

/** Pictures of less would have no scale, in mm. */
const CRUMB = 1;

/**
 * How large its paper is, and what is drawn on it, whatever the scale: marks over its edges are left out. Where a recipe
 * leaves no paper, as large as a crumb.
 */
export function paperSize(draw: (pen: Pen) => Drawing, measure: Pen['measure']): Size {
  const paper = draw({ scale: SMALL, measure }).filter(({ layer }) => layer !== 'mark');
  const { width, height } = boxOf(paper);
  return { width: Math.max(width, CRUMB), height: Math.max(height, CRUMB) };
}

/** The box about a drawing's lines and surfaces. */
function boxOf(drawing: Drawing) {
  const points = drawing.flatMap(({ shape }) => segmentsOf(shape).flatMap(({ from, to }) => [from, to]));
  const { min, max } = bounds(points);
  return { x: min.x, y: min.y, width: max.x - min.x, height: max.y - min.y };
}
