/** The shortest text to be had by leaving out lines, then characters, of which something still holds. */
export function shrunk(text: string, holds: (text: string) => boolean): string {
  const byLine = lessOf(text.split(/(?<=\n)/), (lines) => holds(lines.join('')));
  return lessOf([...byLine.join('')], (characters) => holds(characters.join(''))).join('');
}

/** Leaves out stretches, half of the list first and single pieces last. */
function lessOf(pieces: readonly string[], holds: (pieces: readonly string[]) => boolean): readonly string[] {
  let left = pieces;
  for (let length = Math.ceil(pieces.length / 2); length >= 1; length = Math.floor(length / 2))
    for (let at = 0; at < left.length; ) {
      const less = left.toSpliced(at, length);
      if (holds(less)) left = less;
      else at += length;
    }
  return left;
}
