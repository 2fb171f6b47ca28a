import type { Weight } from '../../../drawing/drawing.js';
import type { TextMeasure } from '../../../drawing/text-measure.js';
import type { Begun } from '../../pdf/document.js';

/** A text in a font: what `TJ` shows, and its width at an em of 1. */
export interface Shown {
  readonly operand: string;
  readonly width: number;
}

/** Texts kept at most: a long book has no end of them. */
const MOST = 20_000;

/** Makes what is shown of a text once, as long as there is room to remember it. */
function remembering(): (text: string, make: () => Shown) => Shown {
  const known = new Map<string, Shown>();
  return (text, make) => {
    const before = known.get(text);
    if (before) return before;
    if (known.size >= MOST) known.clear();
    const shown = make();
    known.set(text, shown);
    return shown;
  };
}

/** Text in a document's fonts. */
export interface Glyphs {
  readonly show: (text: string, weight: Weight) => Shown;
  readonly measure: TextMeasure;
}

/** Sets text in the document's fonts; each word is shaped once, kerning kept. */
export function glyphsOf({ pdf, printable }: Begun): Glyphs {
  const words = { regular: remembering(), bold: remembering() };
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
  const word = (text: string, weight: Weight): Shown => words[weight](text, () => shape(text, weight));
  const whole = (text: string, weight: Weight): Shown => {
    const parts = printable(text.normalize(), weight).match(WORDS) ?? [];
    const shown = parts.map((part) => word(part, weight));
    return {
      operand: shown.map(({ operand }) => operand).join(''),
      width: shown.reduce((sum, { width }) => sum + width, 0),
    };
  };
  const texts = { regular: remembering(), bold: remembering() };
  return {
    show: (text, weight) => texts[weight](text, () => whole(text, weight)),
    // What is measured is mostly a part of a line, once.
    measure: (text, size, weight) => whole(text, weight).width * size,
  };
}

/** A word with the space after it. */
const WORDS = /[^ \t]*[ \t]|[^ \t]+$/g;
