import type { Envelope, Size } from '../recipe/recipe.js';
import type { Stated } from '../recipe/origin.js';
import type { Compiled } from './wish.js';

/** Compiles an envelope that is known already. */
export type CompileEnvelope = (envelope: Envelope) => Compiled;

/** An envelope that takes a card, and what room is left in it at worst. */
export interface Taker {
  readonly envelope: Envelope;
  readonly facts: Compiled['facts'];
}

/**
 * Which envelopes, made as they are, take another card: each is compiled again with that card, its blank and its marks fixed as
 * made. The snuggest first.
 */
export const takersOf = (
  card: Size,
  bulk: number,
  recipes: readonly Compiled[],
  compile: CompileEnvelope,
): readonly Taker[] =>
  recipes
    .filter(({ diagnostics }) => isSound(diagnostics))
    .flatMap((recipe): readonly Taker[] => {
      const ways = [card, { width: card.height, height: card.width }].map((way) =>
        compile(withCard(recipe, way, bulk)),
      );
      const taken = ways.find(({ diagnostics }) => isSound(diagnostics));
      return taken ? [{ envelope: recipe.envelope, facts: taken.facts }] : [];
    })
    .sort((one, other) => spare(one) - spare(other));

const isSound = (diagnostics: Compiled['diagnostics']): boolean =>
  diagnostics.every(({ severity }) => severity !== 'error');

const spare = ({ facts: { worst } }: Taker): number => worst.roomWidth + worst.roomHeight;

/** The same envelope as made, with another card in it; what it promises of its own figures does not hold for that. */
function withCard({ envelope, facts }: Compiled, card: Size, bulk: number): Envelope {
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
