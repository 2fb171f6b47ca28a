/** A title in a list is no longer, in letters: whole, it stands over its recipe. */
const LONGEST = 120;

/** A title as a list has it. */
export function inAList(title: string): string {
  const letters = [...title];
  return letters.length <= LONGEST ? title : `${letters.slice(0, LONGEST).join('').trimEnd()}…`;
}

/** `1 envelope`, `12 envelopes` */
export const counted = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? '' : 's'}`;
