import type { Weight } from '../../drawing/drawing.js';
import type { TextMeasure } from '../../drawing/text-measure.js';

/** Words kept at most: a long book has no end of them. */
const MOST = 20_000;

/**
 * A measure that has each word measured once. `width` is that of a text at an em of 1. A word is taken with the space after it, as
 * it is set.
 */
export function measuredByWords(width: (text: string, weight: Weight) => number): TextMeasure {
  const known = { regular: new Map<string, number>(), bold: new Map<string, number>() };
  const ofWord = (word: string, weight: Weight): number => {
    const widths = known[weight];
    const before = widths.get(word);
    if (before !== undefined) return before;
    if (widths.size >= MOST) widths.clear();
    const wide = width(word, weight);
    widths.set(word, wide);
    return wide;
  };
  return (text, size, weight) =>
    size * (text.match(WORDS) ?? []).reduce((sum, word) => sum + ofWord(word, weight), 0);
}

/** A word with the space after it, as the PDF library sets them. */
const WORDS = /[^ \t]*[ \t]|[^ \t]+$/g;
