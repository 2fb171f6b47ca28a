import { type Block, paragraph } from './block.js';
import { type TextMeasure, wrap } from './text-measure.js';

/** Sizes in mm, the largest first: the first in which a title takes few lines, or else the last, cut short. */
const SIZES = [5.2, 4.2, 3.4];
const LINES = 2;

/** A title in bold. */
export function titleBlock(title: string, width: number, measure: TextMeasure): Block {
  const fitting = SIZES.find((size) => wrap(title, width, size, measure, 'bold').length <= LINES);
  const size = fitting ?? SIZES.at(-1) ?? 0;
  const words = fitting ? title : shortened(title, width, size, measure);
  return paragraph(words, width, size, measure, 'bold');
}

function shortened(title: string, width: number, size: number, measure: TextMeasure): string {
  const letters = [...title];
  const cut = (): string => `${letters.join('').trimEnd()}…`;
  while (letters.length > 0 && wrap(cut(), width, size, measure, 'bold').length > LINES) letters.pop();
  return cut();
}
