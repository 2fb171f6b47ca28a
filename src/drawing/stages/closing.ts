import type { Envelope } from '../../recipe/recipe.js';

const WORDS: Readonly<Record<Envelope['fasten']['value'], string>> = {
  glue: 'Flap closed',
  tuck: 'Flap tucked behind the bottom flap',
  seal: 'Flap closed with a seal',
};

/** How the envelope is closed, in words. */
export const closing = ({ fasten }: Envelope): string => WORDS[fasten.value];
