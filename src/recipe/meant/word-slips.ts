/** Of the words that a property offers, the one that somebody surely or probably meant who wrote another. */
export const wordMeant = <Word extends string>(word: string, offered: readonly Word[]): Word | undefined =>
  offered.find((each) => each === SLIPS.get(word.toLowerCase()));

/** By the edge that is hinged, by what holds the flap, by what becomes of a corner. */
const SLIPS: ReadonlyMap<string, string> = new Map([
  ['long', 'side'],
  ['short', 'end'],
  ['tape', 'glue'],
  ['sticker', 'seal'],
  ['wax', 'seal'],
  ['cut', 'notched'],
  ['kept', 'folded'],
]);
