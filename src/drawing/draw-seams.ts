import type { Folding } from '../folding/folding.js';
import { seams } from '../folding/seams.js';
import type { Segment } from '../plane/point.js';
import type { Polygon } from '../plane/polygon.js';
import { type Drawing, line } from './drawing.js';
import { hatch, RISING } from './hatch.js';
import { SQUARE_TO_PAGE } from './place.js';

/** How far apart hatching is drawn, in mm. */
const SPACING = 2.5;

/** The seams that make the pocket, hatched on the flap that carries their tape, in the blank's frame. */
export const drawSeams = (folding: Folding): Drawing =>
  seams(folding)
    .filter(({ strip }) => strip.on !== 'seal')
    .flatMap(({ flat }) => seamHatch(flat.on))
    .map(({ from, to }) => line('seam', from, to));

/** How what a seam takes is hatched. */
export const seamHatch = (outline: Polygon): readonly Segment[] =>
  hatch(outline, SPACING, -RISING - SQUARE_TO_PAGE);
