import { copiesOf } from '../folding/copies.js';
import type { Paper } from '../recipe/recipe.js';
import { boxDepth } from './box-depth.js';
import type { CardFit } from './fit.js';
import { type Made, type TryEnvelope, takersOf } from './taken-by.js';
import { type Try, recipeText, type Wish } from './wish.js';

/** What is at hand: papers, and recipes that were made. */
export interface AtHand {
  readonly papers: readonly Paper[];
  readonly recipes: readonly Made[];
}

/** The recipe for a card, with walls where its bulk wants them and none are asked for; null where it cannot be read. */
export function fitCard(
  asked: Wish,
  { papers, recipes }: AtHand,
  attempt: Try,
  tryEnvelope: TryEnvelope,
): CardFit | null {
  const depth = asked.depth ?? boxDepth(asked, attempt);
  const wish: Wish = depth > 0 ? { ...asked, depth } : asked;
  const tried = attempt(recipeText(wish));
  if (tried === null) return null;
  const { blank } = tried.facts;
  return {
    kind: 'card',
    wish,
    tried,
    papers: papers.flatMap((paper) => {
      const sheet = paper.sheet?.value;
      const copies = sheet ? copiesOf(blank, sheet) : 0;
      return sheet && copies > 0 ? [{ paper, sheet, copies }] : [];
    }),
    takers: takersOf(wish.card, tried.facts.card.bulk, recipes, tryEnvelope),
  };
}
