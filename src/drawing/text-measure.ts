import type { Weight } from './drawing.js';

/** How wide a line of text comes out, in mm, at an em of `size` mm. Handed in by whoever has the font. */
export type TextMeasure = (text: string, size: number, weight: Weight) => number;

/** Heights of the letters as parts of the em: capitals, descenders (the embedded typeface; others come near). */
export const CAP_HEIGHT = 0.66;
export const DESCENT = 0.25;

/** The lines into which words fall within a width; a word that is longer is broken where it must be. */
export function wrap(
  text: string,
  width: number,
  size: number,
  measure: TextMeasure,
  weight: Weight = 'regular',
): readonly string[] {
  const fits = (words: string): boolean => measure(words, size, weight) <= width;
  const lines: string[] = [];
  let current = '';
  for (const word of text.split(' ')) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (fits(longer)) {
      current = longer;
      continue;
    }
    if (current !== '') lines.push(current);
    const pieces = broken(word, fits);
    lines.push(...pieces.slice(0, -1));
    current = pieces.at(-1) ?? '';
  }
  return [...lines, current];
}

/** A word in pieces that fit, each as long as it may be and of one letter at least. */
function broken(word: string, fits: (text: string) => boolean): readonly string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const letter of word) {
    if (piece !== '' && !fits(piece + letter)) {
      pieces.push(piece);
      piece = '';
    }
    piece += letter;
  }
  return [...pieces, piece];
}
