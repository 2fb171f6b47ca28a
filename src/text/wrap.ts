/**
 * Breaks a text into lines that are at most `width` wide by `measure`. Breaks at plain spaces, not at no-break ones; a
 * word wider than a line is broken where it must be. The first line is shorter by `indent` (and
 * may come out empty). A text of nothing but spaces is one empty line.
 */
export function wrap(
  text: string,
  width: number,
  measure: (text: string) => number,
  indent = 0,
): readonly string[] {
  const lines: string[] = [];
  const space = measure(' ');
  let line = '';
  let reach = indent;
  for (const word of text.split(/[ \n\t]+/).filter((part) => part !== '')) {
    const longer = reach + (line === '' ? 0 : space) + measure(word);
    if (longer <= width) {
      line = line === '' ? word : `${line} ${word}`;
      reach = longer;
      continue;
    }
    if (line !== '' || reach > 0) lines.push(line);
    const pieces = broken(word, width, measure);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? '';
    reach = measure(line);
  }
  return line === '' && lines.length > 0 ? lines : [...lines, line];
}

/** A word in pieces that fit, at least a character each. */
function broken(word: string, width: number, measure: (text: string) => number): readonly string[] {
  if (measure(word) <= width) return [word];
  const pieces: string[] = [];
  let piece = '';
  for (const character of word) {
    if (piece !== '' && measure(piece + character) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += character;
  }
  return [...pieces, piece];
}
