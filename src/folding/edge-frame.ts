import type { Point } from '../plane/point.js';

/**
 * The blank's frame turned by 45°, so that coordinates run along its edges: there blank, marks and folded points lie on
 * the ruler's grid, and booleans on whole numbers are exact.
 */
export const alongEdges = ({ x, y }: Point): Point => ({ x: (x + y) / Math.SQRT2, y: (y - x) / Math.SQRT2 });

/** Back to the blank's own frame. */
export const fromEdges = ({ x, y }: Point): Point => ({ x: (x - y) / Math.SQRT2, y: (x + y) / Math.SQRT2 });
