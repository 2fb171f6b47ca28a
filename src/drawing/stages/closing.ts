import type { Folding } from '../../folding/folding.js';
import type { Envelope } from '../../recipe/recipe.js';
import { tucksBehind } from './tucks-behind.js';

const WORDS: Readonly<Record<Envelope['fasten']['value'], (folding: Folding) => string>> = {
  glue: () => 'Flap closed',
  tuck: (folding) => `Flap tucked behind the ${tucksBehind(folding)}`,
  seal: () => 'Flap closed with a seal',
};

/** How the envelope is closed, in words. */
export const closing = (folding: Folding, { fasten }: Envelope): string => WORDS[fasten.value](folding);
