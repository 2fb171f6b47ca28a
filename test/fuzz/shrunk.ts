/** Whether what is looked for still holds of a text. */
type Holds = (text: string) => boolean | Promise<boolean>;

/** The shortest text to be had by leaving out lines, then characters, of which something still holds; after so many trials, what there is. */
export async function shrunk(text: string, holds: Holds, trials: number): Promise<string> {
  let left = trials;
  const tried: Holds = (shorter) => left-- > 0 && holds(shorter);
  const lines = await lessOf(text.split(/(?<=\n)/), tried);
  return (await lessOf([...lines.join('')], tried)).join('');
}

/** Leaves out stretches, half of the list first and single pieces last. */
async function lessOf(pieces: readonly string[], holds: Holds): Promise<readonly string[]> {
  let left = pieces;
  for (let length = Math.ceil(pieces.length / 2); length >= 1; length = Math.floor(length / 2))
    for (let at = 0; at < left.length; ) {
      const less = left.toSpliced(at, length);
      if (await holds(less.join(''))) left = less;
      else at += length;
    }
  return left;
}
