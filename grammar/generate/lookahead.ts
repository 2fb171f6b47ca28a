import { createTokenInstance, EOF, type IToken } from 'chevrotain';
import { inside, type Place } from '../prepared-parser.js';
import { RecipeParser } from '../recipe-parser.js';
import { vocabulary } from '../tokens.js';

/** What may come next at each place of the grammar, as the parser library finds it: it is asked about every kind of token. */
export function lookahead(): string {
  const { lookAheadFuncsCache } = inside(new RecipeParser({ analyse: true }));
  const places = [...lookAheadFuncsCache].map(([key, next]): Place => {
    const tokens = [...vocabulary, EOF].map(
      (type): IToken => createTokenInstance(type, '', 0, 0, 1, 1, 1, 1),
    );
    const found = tokens.map((token) => ({
      name: token.tokenType.name,
      into: next.call({ LA: () => token, LA_FAST: () => token }),
    }));
    const isOptional = found.some(({ into }) => typeof into === 'boolean');
    const leading = (wanted: number | boolean): readonly string[] =>
      found.flatMap(({ name, into }) => (into === wanted ? [name] : []));
    if (isOptional) return { key, optional: leading(true) };
    const last = Math.max(...found.map(({ into }) => (typeof into === 'number' ? into : -1)));
    return { key, alternatives: Array.from({ length: last + 1 }, (_, index) => leading(index)) };
  });
  return `[\n${places.map((place) => `  ${JSON.stringify(place)}`).join(',\n')}\n]\n`;
}
