import type { LWPolylineVertex } from '@tarikjabiri/dxf';
import { type Path, sweep } from '../../plane/path.js';
import { distance } from '../../plane/point.js';
import { groupNumber, groupPoint } from './group-point.js';

/** Stretches shorter than this, in mm, have no direction; they are left out. */
const POINTLIKE = 1e-6;

/**
 * The vertices of a closed polyline, each with what leads to the next: a bulge for an arc (the tangent of a quarter of the
 * angle that it turns through, negative for a clockwise one), none for a line.
 */
export function vertices({ start, stretches }: Path): LWPolylineVertex[] {
  return stretches.flatMap((stretch, index) => {
    const from = stretches[index - 1]?.to ?? start;
    if (distance(from, stretch.to) < POINTLIKE) return [];
    const point = groupPoint(from);
    return stretch.kind === 'line'
      ? [{ point }]
      : [{ point, bulge: groupNumber(Math.tan(sweep(from, stretch) / 4)) }];
  });
}
