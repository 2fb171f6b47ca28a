/** A recipe with nothing wrong. */
export const SOUND = `units in\n\n${envelope('half-letter', '8 1/2 x 5 1/2')}`;

/** One with an error in its folding. */
export const GAPING = 'units in\n\nenvelope gaping {\n  card: 8 1/2 x 5 1/2\n  blank: 10\n}\n';

/** An envelope with nothing but its card. */
export function envelope(name: string, card: string): string {
  return `envelope ${name} { card: ${card} }\n`;
}

/** Envelopes of growing size, one for each name. */
export const recipeOf = (...names: readonly string[]): string =>
  `units in\n${names.map((name, index) => `\n${envelope(name, `${3 + index} x ${4 + index}`)}`).join('')}`;
