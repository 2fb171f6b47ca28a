import type { Path } from '../plane/path.js';
import type { Point } from '../plane/point.js';
import type { Drawing, Shape } from './drawing.js';

/** Scaled, then turned counter-clockwise about the origin, then moved. */
export interface Placement {
  readonly angleDegrees?: number;
  readonly scale?: number;
  readonly x?: number;
  readonly y?: number;
}

/** Turns the blank so that its edges lie square to the page: bottom corner at lower left, seal corner at upper right. */
export const SQUARE_TO_PAGE = -45;

/** The same drawing elsewhere. Lettering is moved and turned with it but keeps its size. */
export function place(drawing: Drawing, placement: Placement): Drawing {
  const at = placer(placement);
  const turned = placement.angleDegrees ?? 0;
  return drawing.map((mark) => ({ ...mark, shape: moved(mark.shape, at, turned) }));
}

/** Where a placement puts a point. */
export function placer({ angleDegrees = 0, scale = 1, x = 0, y = 0 }: Placement): (point: Point) => Point {
  const angle = (angleDegrees * Math.PI) / 180;
  const [cosine, sine] = [scale * Math.cos(angle), scale * Math.sin(angle)];
  return (from) => ({ x: x + cosine * from.x - sine * from.y, y: y + sine * from.x + cosine * from.y });
}

function moved(shape: Shape, at: (point: Point) => Point, turned: number): Shape {
  switch (shape.kind) {
    case 'line':
      return { ...shape, from: at(shape.from), to: at(shape.to) };
    case 'polyline':
      return { ...shape, points: shape.points.map(at) };
    case 'path':
      return { ...shape, path: movedPath(shape.path, at) };
    case 'text':
      return { ...shape, at: at(shape.at), angleDegrees: shape.angleDegrees + turned };
  }
}

const movedPath = ({ start, stretches }: Path, at: (point: Point) => Point): Path => ({
  start: at(start),
  stretches: stretches.map((stretch) =>
    stretch.kind === 'line'
      ? { ...stretch, to: at(stretch.to) }
      : { ...stretch, to: at(stretch.to), centre: at(stretch.centre) },
  ),
});
