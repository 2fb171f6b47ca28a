import type { Label } from '../diagnostics/diagnostic.js';
import type { Stated } from '../recipe/origin.js';
import { writtenName } from '../recipe/restate.js';
import type { Envelope } from '../recipe/recipe.js';
import type { Span } from '../text/span.js';

/** The fields of an envelope that are stated or defaulted, by their inner names. */
export type Property = {
  [Name in keyof Envelope]: Envelope[Name] extends Stated<unknown> ? Name : never;
}[keyof Envelope];

/** Where a finding points, and what came from elsewhere. */
export interface Place {
  readonly at: Span;
  readonly related: readonly Label[];
}

/**
 * Where to look for a mistake that any of these properties may have made, the likeliest first: at the first that the
 * envelope itself states, or else at its name. Each that is inherited is shown where it is stated.
 */
export function place(envelope: Envelope, properties: readonly Property[]): Place {
  const origins = properties.map((property) => ({ property, origin: envelope[property].origin }));
  const written = origins.find(({ origin }) => origin.kind === 'written');
  const related = origins.flatMap(({ property, origin }): readonly Label[] =>
    origin.kind === 'inherited'
      ? [{ span: origin.span, text: `\`${writtenName(property)}\` comes from ${origin.from}` }]
      : [],
  );
  return { at: written ? written.origin.span : envelope.span, related };
}
