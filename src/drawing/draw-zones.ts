import type { Folding } from '../folding/folding.js';
import { zones } from '../folding/zones.js';
import type { Envelope } from '../recipe/recipe.js';
import { type Drawing, outline, polyline } from './drawing.js';

/**
 * Where the show side may be decorated, addressed and stamped, in the blank's frame: seen through the paper, since that
 * frame shows the inside.
 */
export function drawZones(folding: Folding, envelope: Envelope): Drawing {
  const { flap, front } = zones(envelope, folding);
  return [
    ...(flap.print ? [outline('zone', flap.print)] : []),
    ...flap.raised.map((part) => outline('raised-zone', part)),
    ...(front.address ? [outline('zone', front.address.outline)] : []),
    // Its other two sides are the front's own edges.
    ...(front.stamp ? [polyline('zone', front.stamp.outline.slice(1))] : []),
  ];
}
