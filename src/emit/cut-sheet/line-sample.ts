import { type Drawing, type Layer, line } from '../../drawing/drawing.js';
import { hatch } from '../../drawing/hatch.js';
import type { Size } from '../../recipe/recipe.js';

/** Distance of hatching in a sample, in mm. */
const HATCH = 1.2;

/** A sample of a kind of line from (0, 0) to (width, height), in mm: hatching as a patch, any other as a level line. */
export function lineSample(layer: Layer, { width, height }: Size): Drawing {
  if (layer !== 'waste') return [line(layer, { x: 0, y: height / 2 }, { x: width, y: height / 2 })];
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  return hatch(corners, HATCH).map(({ from, to }) => line(layer, from, to));
}
