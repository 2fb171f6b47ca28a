import { type Drawing, type Layer, line, rectangle } from './drawing.js';
import { hatch, RISING } from './hatch.js';
import type { Size } from '../recipe/recipe.js';

/** Distance of hatching in a sample, in mm. */
const HATCH = 1.2;

/** A sample of a kind of line from (0, 0) to (width, height), in mm: what is not a long line on the blank looks like itself. */
export const lineSample = (layer: Layer, size: Size): Drawing =>
  (SAMPLES[layer] ?? level)(layer, size).map((mark) => ({ ...mark, layer: 'sample', like: mark.layer }));

type Sample = (layer: Layer, size: Size) => Drawing;

const level: Sample = (layer, { width, height }) => [
  line(layer, { x: 0, y: height / 2 }, { x: width, y: height / 2 }),
];

const boxed: Sample = (layer, { width, height }) => [rectangle(layer, 0, 0, width, height)];

const hatched =
  (degrees: number): Sample =>
  (layer, { width, height }) => {
    const corners = [
      { x: 0, y: 0 },
      { x: width, y: 0 },
      { x: width, y: height },
      { x: 0, y: height },
    ];
    return hatch(corners, HATCH, degrees).map(({ from, to }) => line(layer, from, to));
  };

const SAMPLES: Partial<Readonly<Record<Layer, Sample>>> = {
  waste: hatched(RISING),
  seam: hatched(-RISING),
  mark: (layer, { width, height }) => [
    line('cut', { x: 0, y: height / 4 }, { x: width, y: height / 4 }),
    line(layer, { x: width / 2, y: height / 4 }, { x: width / 2, y: height }),
  ],
  glue: boxed,
};
