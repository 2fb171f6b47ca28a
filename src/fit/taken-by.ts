import type { Envelope, Size } from '../recipe/recipe.js';
import type { Stated } from '../recipe/origin.js';
import type { Tried } from './wish.js';

/** An envelope that works, with its numbers. */
export type Made = Pick<Tried, 'envelope' | 'facts'>;

/** Tries an envelope that is known already. */
export type TryEnvelope = (envelope: Envelope) => Tried;

/** An envelope that takes a card, and what room is left in it at worst. */
export interface Taker {
  readonly envelope: Envelope;
  readonly facts: Tried['facts'];
}

/**
 * Which envelopes, made as they are, take another card: each is tried again with that card, its blank and its marks fixed as
 * made. The snuggest first.
 */
export const takersOf = (
  card: Size,
  bulk: number,
  recipes: readonly Made[],
  attempt: TryEnvelope,
): readonly Taker[] =>
  recipes
    .flatMap((recipe): readonly Taker[] => {
      const ways = [card, { width: card.height, height: card.width }].map((way) =>
        attempt(withCard(recipe, way, bulk)),
      );
      const taken = ways.find(works);
      return taken ? [{ envelope: recipe.envelope, facts: taken.facts }] : [];
    })
    .sort((one, other) => spare(one) - spare(other));

const works = ({ severities }: Tried): boolean => !severities.has('error');

const spare = ({ facts: { worst } }: Taker): number => worst.roomWidth + worst.roomHeight;

/** The same envelope as made, with another card in it; what it promises of its own figures does not hold for that. */
function withCard({ envelope, facts }: Made, card: Size, bulk: number): Envelope {
  const fixed = <T>(value: T): Stated<T> => ({ value, origin: envelope.card.origin });
  const mark = (flap: keyof typeof facts.scores): number => facts.scores[flap][0]?.alongEdge ?? 0;
  return {
    ...envelope,
    card: fixed(card),
    bulk: fixed(bulk),
    blank: fixed(facts.blank),
    sideMarks: fixed([mark('left'), mark('right')] as const),
    sealMark: fixed(mark('seal')),
    bottomMark: fixed(mark('bottom')),
    post: fixed([]),
    expects: [],
    expectsPost: [],
  };
}
