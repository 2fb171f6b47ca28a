import { clipSegment, halfPlanesOf } from '../plane/clip.js';
import { flatten } from '../plane/path.js';
import type { Point, Segment } from '../plane/point.js';
import type { Shape } from './drawing.js';

/** A box on a page or in a drawing, in mm, from its lower left corner. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Whether any of these lines passes through a box. */
export function touches(lines: readonly Segment[], box: Box): boolean {
  const inside = halfPlanesOf(cornersOf(box));
  return lines.some((segment) => clipSegment(segment, inside) !== null);
}

export const cornersOf = ({ x, y, width, height }: Box): readonly Point[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];

/** The straight lines of a shape, arcs flattened to within 0.01 mm; lettering has none. */
export function segmentsOf(shape: Shape): readonly Segment[] {
  switch (shape.kind) {
    case 'text':
      return [];
    case 'line':
      return [shape];
    case 'polyline':
      return pairs(shape.points);
    case 'path': {
      const points = flatten(shape.path);
      return pairs([...points, ...points.slice(0, 1)]);
    }
  }
}

const pairs = (points: readonly Point[]): readonly Segment[] =>
  points.slice(1).map((to, index) => ({ from: points[index] ?? to, to }));
