import type { Envelope } from '../recipe/recipe.js';
import { type FlapZones, flapZones } from './flap-zones.js';
import type { Folding } from './folding.js';
import { type FrontZones, frontZones } from './front-zones.js';

/** Where a maker may decorate, and where the post wants address and stamp. */
export interface Zones {
  readonly flap: FlapZones;
  readonly front: FrontZones;
}

/** The zones of a folded envelope, computed when they are asked for: compiling needs none. */
export const zones = (envelope: Envelope, folding: Folding): Zones => ({
  flap: flapZones(folding),
  front: frontZones(envelope, folding),
});
