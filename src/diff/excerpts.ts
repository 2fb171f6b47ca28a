/** Texts up to this many characters are shown whole, and what is shown of others is about as long at most. */
const WHOLE = 72;
const LONGEST = 160;
/** How much of what is alike is shown on either side of what differs. */
const CONTEXT = 24;

/** Two texts as much of each as shows where they differ: `…` stands for the rest. */
export function excerpts(before: string, after: string): readonly [before: string, after: string] {
  const [one, other] = [[...before], [...after]];
  if (Math.max(one.length, other.length) <= WHOLE) return [before, after];
  const shorter = Math.min(one.length, other.length);
  const head = alike(shorter, (index) => one[index] === other[index]);
  const tail = alike(shorter - head, (index) => one.at(-1 - index) === other.at(-1 - index));
  const from = head > CONTEXT ? wordFrom(one, head - CONTEXT, head) : 0;
  const left = tail > CONTEXT ? wordsAfter(one, one.length - tail, CONTEXT) : 0;
  return [stretch(one, from, one.length - left), stretch(other, from, other.length - left)];
}

/** The beginning of a text. */
export const excerpt = (text: string): string => stretch([...text], 0, text.length);

/** The characters from `from` to before `to`, shortened if they are many. */
function stretch(text: readonly string[], from: number, to: number): string {
  const end = Math.min(to, from + LONGEST, text.length);
  return `${from > 0 ? '…' : ''}${text.slice(from, end).join('')}${end < text.length ? '…' : ''}`;
}

/** Where the first whole word between two places begins; the first place where none does. */
function wordFrom(text: readonly string[], from: number, to: number): number {
  const space = text.indexOf(' ', from);
  return space < 0 || space >= to ? from : space + 1;
}

/** How many characters are left when a text is cut after a place, behind the last whole word within a reach of it. */
function wordsAfter(text: readonly string[], from: number, reach: number): number {
  const space = text.lastIndexOf(' ', from + reach);
  return text.length - (space > from ? space : from + reach);
}

function alike(length: number, isAlike: (index: number) => boolean): number {
  let index = 0;
  while (index < length && isAlike(index)) index++;
  return index;
}
