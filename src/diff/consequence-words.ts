import { blank, ownPaper } from './consequence.js';
import { CONSEQUENCES, type Changed, type Consequence } from './difference.js';

/** What a consequence asks of whoever has the envelope made, or cut, as it was. */
const CONSEQUENCE_WORDS: Readonly<Record<Consequence, string>> = {
  recut: 'Cut anew: the blank is another one.',
  restock: 'Take other paper: the blank keeps its size.',
  rescore: 'Score anew: the blank keeps its size; marks or scores differ.',
  retrim: 'Trim anew: tips or notches are cut otherwise; what is cut shorter already wants a new blank.',
  reglue: 'Glue anew: seams, tape or fastening differ.',
  wording: 'Only words: what is made stays as it is.',
  none: 'Nothing to do: paper and words stay as they are.',
};

/** Whether paper is worked otherwise. */
export const reachesPaper = (consequence: Consequence): boolean =>
  CONSEQUENCES.indexOf(consequence) < CONSEQUENCES.indexOf('wording');

/** What several ask together, in sentences: who cuts the blank anew does all the rest anew as well, and words follow paper. */
export function consequenceWords(change: Changed): string {
  const { consequences, before, after } = change;
  const [first = 'none'] = consequences;
  const others = first === 'recut' && blank(before, after) ? [] : consequences.slice(1).filter(reachesPaper);
  return [first, ...others].flatMap((consequence) => wordsOf(consequence, change)).join(' ');
}

/** Of a lining it is said that it is the lining; that one has come or gone says all of its paper. */
function wordsOf(consequence: Consequence, { before, after }: Changed): readonly string[] {
  const [was, is] = [before.facts.liner, after.facts.liner];
  if (consequence === 'recut' && !blank(before, after))
    return [
      `${was && is ? 'Cut the lining anew' : is ? 'Cut a lining' : 'Leave the lining out'}: the blank keeps its size.`,
    ];
  if (consequence === 'restock' && !ownPaper(before, after))
    return was && is ? ['Take other paper for the lining.'] : [];
  return [CONSEQUENCE_WORDS[consequence]];
}
