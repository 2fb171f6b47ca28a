/** A title in a list is no longer, in letters: whole, it stands over its recipe. */
const LONGEST = 120;

/** A title as a list has it. */
export function inAList(title: string): string {
  const letters = [...title];
  return letters.length <= LONGEST ? title : `${letters.slice(0, LONGEST).join('').trimEnd()}…`;
}
