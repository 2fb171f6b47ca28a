import type { FlapZones } from '../folding/flap-zones.js';
import type { Folding } from '../folding/folding.js';
import { zones } from '../folding/zones.js';
import { apartFrom } from '../plane/apart-from.js';
import { area, type Polygon } from '../plane/polygon.js';
import type { Envelope } from '../recipe/recipe.js';
import { seamHatch } from './draw-seams.js';
import { type Drawing, line, outline, polyline } from './drawing.js';

/**
 * Where the show side may be decorated, addressed and stamped, in the blank's frame: seen through the paper, since that
 * frame shows the inside.
 */
export function drawZones(folding: Folding, envelope: Envelope): Drawing {
  const { flap, front } = zones(envelope, folding);
  return [
    ...(flap.print ? [outline('zone', flap.print)] : []),
    ...flap.raised.map((part) => outline('raised-zone', part)),
    ...overSeams(flap),
    ...(front.address ? [outline('zone', front.address.outline)] : []),
    // Its other two sides are the front's own edges.
    ...(front.stamp ? [polyline('zone', front.stamp.outline.slice(1))] : []),
  ];
}

/** What of the room to print takes no raised work, hatched as the seams are that lie beneath it. */
function overSeams({ print, raised }: FlapZones): Drawing {
  if (!print) return [];
  const isHole = (part: Polygon): boolean => area(part) < 0;
  const free = raised.filter((part) => !isHole(part)).flatMap(seamHatch);
  return [
    ...seamHatch(print).flatMap((stroke) => apartFrom(stroke, free)),
    ...raised.filter(isHole).flatMap(seamHatch),
  ].map(({ from, to }) => line('raised-zone', from, to));
}
