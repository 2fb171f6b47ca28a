import type { Place } from './difference.js';
import type { At, Where } from './report.js';

/** `style house, specs/house.plica:12`, or where it was: `before: here, tides.plica:7`. Names are set as wanted. */
export function whereWords({ side, place, at }: Where, set: (name: string) => string): string {
  const words = `${placeWords(place, set)}, ${set(atWords(at))}`;
  return side === null ? words : `${side}: ${words}`;
}

/** `here`, `style house`, `paper laid`. */
export const placeWords = (place: Place, set: (name: string) => string): string =>
  place.kind === 'here' ? 'here' : `${place.kind} ${set(place.name)}`;

export const atWords = ({ file, line }: At): string => `${file}:${line}`;
