import type { Figure } from '../../../drawing/figure.js';
import { POINTS_PER_MM } from '../../pdf/document.js';
import type { Strip } from './strip.js';

/** A figure as a strip, at its own size, at the left. */
export const picture = ({ drawing, height }: Figure, above: number): Strip => ({
  above,
  height: height * POINTS_PER_MM,
  items: [{ kind: 'picture', x: 0, y: 0, height: height * POINTS_PER_MM, drawing }],
  keepsWithNext: false,
});
