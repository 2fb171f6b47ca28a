import type { Point } from '../plane/point.js';
import type { AsMade, FlapName, FlapRecord } from './folding.js';

/** Unit vector from the blank's centre towards each flap's corner, square to its scores. */
export const OUTWARD: FlapRecord<Point> = {
  left: { x: -1, y: 0 },
  right: { x: 1, y: 0 },
  seal: { x: 0, y: 1 },
  bottom: { x: 0, y: -1 },
};

/** The two flaps on either side of each flap, counter-clockwise neighbour last. */
export const NEIGHBOURS: FlapRecord<readonly [FlapName, FlapName]> = {
  bottom: ['left', 'right'],
  right: ['bottom', 'seal'],
  seal: ['right', 'left'],
  left: ['seal', 'bottom'],
};

/** The blank's four edges: the two corners that meet there, and which side of the blank's size it is. */
export const EDGES: readonly {
  readonly between: readonly [FlapName, FlapName];
  readonly side: 'width' | 'height';
}[] = [
  { between: ['bottom', 'right'], side: 'width' },
  { between: ['seal', 'right'], side: 'height' },
  { between: ['seal', 'left'], side: 'width' },
  { between: ['bottom', 'left'], side: 'height' },
];

export const isSide = (flap: FlapName): boolean => flap === 'left' || flap === 'right';

/** How far a point lies from the blank's centre towards a flap's corner. */
export const outwardOf = (flap: FlapName, { x, y }: Point): number =>
  OUTWARD[flap].x * x + OUTWARD[flap].y * y;

/** Where a flap's first score lies, measured outward from the blank's centre; so does the face's edge. */
export const firstScoreAt = ({ diagonal, first }: AsMade, flap: FlapName): number =>
  diagonal / 2 - first[flap].fromCorner;

/** Where a flap's outermost score lies, measured outward from the blank's centre. */
export const outerScoreAt = ({ diagonal, first, second }: AsMade, flap: FlapName): number =>
  diagonal / 2 - (second ?? first)[flap].fromCorner;
