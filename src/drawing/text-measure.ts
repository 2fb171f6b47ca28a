import type { Weight } from './drawing.js';

/** How wide a line of text comes out, in mm, at an em of `size` mm. Handed in by whoever has the font. */
export type TextMeasure = (text: string, size: number, weight: Weight) => number;

/** Heights of the letters as parts of the em: capitals, descenders (the embedded typeface; others come near). */
export const CAP_HEIGHT = 0.66;
export const DESCENT = 0.25;

/** The lines into which words fall within a width; a word that is longer stands alone and runs over. */
export function wrap(
  text: string,
  width: number,
  size: number,
  measure: TextMeasure,
  weight: Weight = 'regular',
): readonly string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of text.split(' ')) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (current !== '' && measure(longer, size, weight) > width) {
      lines.push(current);
      current = word;
    } else current = longer;
  }
  return [...lines, current];
}
