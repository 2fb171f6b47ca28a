import type { Caliper, Paper } from '../../recipe/recipe.js';
import { both, type Lengths } from './lengths.js';

/** A paper by its title, its weight and its thickness, and how that is known. */
export function paperWords(paper: Paper | null, { value, basis }: Caliper, say: Lengths): string {
  const because = {
    stated: '',
    estimated: ', estimated from its weight',
    assumed: paper
      ? ', assumed: the paper states neither caliper nor weight'
      : ', assumed: no paper is named',
  };
  const weight = paper?.weight ? `, ${Math.round(paper.weight.value)} g/m²` : '';
  return `${paper ? `${paper.title}${weight}, ` : ''}${both(say.exact(value))} thick${because[basis]}`;
}
