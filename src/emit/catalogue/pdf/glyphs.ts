import type { Weight } from '../../../drawing/drawing.js';
import type { Begun } from '../../pdf/document.js';

/** A text in a font: what `TJ` shows, and its width at an em of 1. */
export interface Shown {
  readonly operand: string;
  readonly width: number;
}

/** Words kept at most: a long book has no end of them. */
const MOST = 20_000;

/** Sets text in the document's fonts; each word is shaped once, kerning kept. */
export function glyphsOf({ pdf, printable }: Begun): (text: string, weight: Weight) => Shown {
  const known = { regular: new Map<string, Shown>(), bold: new Map<string, Shown>() };
  const shape = (word: string, weight: Weight): Shown => {
    pdf.font(weight);
    const [glyphs, positions] = pdf._font.encode(word);
    let [operand, waiting, width] = ['', '', 0];
    glyphs.forEach((glyph, index) => {
      const { xAdvance, advanceWidth } = positions[index] as { xAdvance: number; advanceWidth: number };
      waiting += glyph;
      width += xAdvance;
      const closer = Math.round((advanceWidth - xAdvance) * 1000) / 1000;
      if (closer === 0) return;
      operand += `<${waiting}>${closer}`;
      waiting = '';
    });
    return { operand: waiting === '' ? operand : `${operand}<${waiting}>`, width: width / 1000 };
  };
  const word = (text: string, weight: Weight): Shown => {
    const words = known[weight];
    const before = words.get(text);
    if (before) return before;
    if (words.size >= MOST) words.clear();
    const shown = shape(text, weight);
    words.set(text, shown);
    return shown;
  };
  return (text, weight) => {
    const words = (printable(text.normalize(), weight).match(WORDS) ?? []).map((each) => word(each, weight));
    return {
      operand: words.map(({ operand }) => operand).join(''),
      width: words.reduce((sum, { width }) => sum + width, 0),
    };
  };
}

/** A word with the space after it. */
const WORDS = /[^ \t]*[ \t]|[^ \t]+$/g;
