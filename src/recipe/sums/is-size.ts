import { sizeNamed } from '../../stock/sizes.js';
import type { Place } from '../place.js';

/** Whether a word stands for two sides here: a size by name, or a let that is one. */
export function isSize(word: string, { context: { names, lets }, file }: Place): boolean {
  const declaration = names.find(word, file);
  return declaration?.kind === 'let'
    ? lets.get(declaration.node)?.kind === 'size'
    : sizeNamed(word) !== undefined;
}
