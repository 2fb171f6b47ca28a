import { CONSEQUENCES, type Consequence } from './difference.js';

/** What a consequence asks of whoever has the envelope made, or cut, as it was. */
export const CONSEQUENCE_WORDS: Readonly<Record<Consequence, string>> = {
  recut: 'Cut anew: the blank, or the lining, is another one.',
  restock: 'Take other paper: the blank keeps its size.',
  rescore: 'Score anew: the blank keeps its size; marks or scores differ.',
  retrim: 'Trim anew: the marks stay, tips or notches are cut otherwise.',
  reglue: 'Glue anew: the paper is cut as before; seams, tape or fastening differ.',
  wording: 'Only words: what is made stays as it is.',
  none: 'Nothing to do: it is only written otherwise.',
};

/** Whether paper is worked otherwise. */
export const reachesPaper = (consequence: Consequence): boolean =>
  CONSEQUENCES.indexOf(consequence) < CONSEQUENCES.indexOf('wording');

/** What several ask together, in sentences: who cuts anew does all the rest anew as well, and words follow paper. */
export function consequenceWords(consequences: readonly Consequence[]): string {
  const [first = 'none'] = consequences;
  const others = first === 'recut' ? [] : consequences.slice(1).filter(reachesPaper);
  return [first, ...others].map((consequence) => CONSEQUENCE_WORDS[consequence]).join(' ');
}
