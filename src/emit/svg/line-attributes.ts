import type { LineKind } from '../../drawing/line-kinds.js';
import { type Attributes, number } from '../xml.js';

/** How a kind of line is stroked, or a surface filled; lengths in mm. */
export const lineAttributes = ({ width, dashes, ink }: LineKind): Attributes =>
  width === 0
    ? { fill: ink.screen, stroke: 'none' }
    : {
        fill: 'none',
        stroke: ink.screen,
        'stroke-width': width,
        ...(dashes.length > 0 && { 'stroke-dasharray': dashes.map(number).join(' ') }),
      };
