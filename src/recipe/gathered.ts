import { type Copied, type Gathered } from './likes.js';
import type { Origin, Stated } from './origin.js';
import { PROPERTIES, type PropertyName, type ValueOf } from './properties.js';

/** Where the value of an entry came from. */
const originOf = ({ span, from }: Copied): Origin =>
  from === null ? { kind: 'written', span } : { kind: 'inherited', span, from };

/** A property's value with its origin; null where it is left out everywhere, put back, or harmlessly broken. */
export function stated<Name extends PropertyName>(
  { entries }: Gathered,
  name: Name,
): Stated<ValueOf<Name>> | null {
  const entry = entries.get(name);
  if (entry?.state !== 'stated') return null;
  return { value: entry.value as ValueOf<Name>, origin: originOf(entry) };
}

/** Whether a value that matters on paper is broken (and has been reported). */
export const isBroken = ({ entries }: Gathered): boolean =>
  [...entries].some(([name, { state }]) => state === 'broken' && !PROPERTIES[name].harmless);
