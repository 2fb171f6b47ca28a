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

/** Makes what there is of a text once, as long as there is room to remember it. */
function remembering<Made>(): (text: string, make: () => Made) => Made {
  const known = new Map<string, Made>();
  return (text, make) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    if (known.size >= MOST) known.clear();
    const made = make();
    known.set(text, made);
    return made;
  };
}

/** A glyph as it is set: its code, how much closer the next one stands, and its width, in thousandths of an em. */
interface Glyph {
  readonly code: string;
  readonly closer: number;
  readonly width: number;
}

/** Text in a document's fonts. */
export interface Glyphs {
  readonly show: (text: string, weight: Weight) => Shown;
  readonly measure: TextMeasure;
}

/** Sets text in the document's fonts; each word is shaped once, kerning kept. */
export function glyphsOf({ pdf, printable }: Begun): Glyphs {
  const shape = (text: string, weight: Weight): readonly Glyph[] => {
    pdf.font(weight);
    const [codes, positions] = pdf._font.encode(text);
    return codes.map((code, index) => {
      const { xAdvance, advanceWidth } = positions[index] as { xAdvance: number; advanceWidth: number };
      return { code, closer: Math.round((advanceWidth - xAdvance) * 1000) / 1000, width: xAdvance };
    });
  };
  const pairs = { regular: remembering<Glyph>(), bold: remembering<Glyph>() };
  /** How the first of two signs is set, or the last of a word. */
  const first = (pair: string, weight: Weight): Glyph =>
    pairs[weight](pair, () => shape(pair, weight)[0] as Glyph);
  const glyphs = (text: string, weight: Weight): readonly Glyph[] =>
    FIGURES.test(text)
      ? Array.from(text, (_, index) => first(text.slice(index, index + 2), weight))
      : shape(text, weight);
  const words = { regular: remembering<Shown>(), bold: remembering<Shown>() };
  const word = (text: string, weight: Weight): Shown =>
    words[weight](text, () => shown(glyphs(text, weight)));
  const whole = (text: string, weight: Weight): Shown => {
    const parts = printable(text.normalize(), weight).match(WORDS) ?? [];
    const all = parts.map((part) => word(part, weight));
    return {
      operand: all.map(({ operand }) => operand).join(''),
      width: all.reduce((sum, { width }) => sum + width, 0),
    };
  };
  const texts = { regular: remembering<Shown>(), bold: remembering<Shown>() };
  return {
    show: (text, weight) => texts[weight](text, () => whole(text, weight)),
    // What is measured is mostly a part of a line, once.
    measure: (text, size, weight) => whole(text, weight).width * size,
  };
}

/** What is shown of glyphs: their codes, moved where one stands closer. */
function shown(glyphs: readonly Glyph[]): Shown {
  let [operand, waiting, width] = ['', '', 0];
  for (const glyph of glyphs) {
    waiting += glyph.code;
    width += glyph.width;
    if (glyph.closer === 0) continue;
    operand += `<${waiting}>${glyph.closer}`;
    waiting = '';
  }
  return { operand: waiting === '' ? operand : `${operand}<${waiting}>`, width: width / 1000 };
}

/**
 * A word of figures. A book has no end of them; the font joins no two of their signs and places each by the next alone, so they are
 * set from pairs.
 */
const FIGURES = /^[\d.,/×()-]+[ \u00a0]?$/;

/** A word with the space after it, of either kind: the font places what follows a space by itself. */
const WORDS = /[^ \t\u00a0]*[ \t\u00a0]|[^ \t\u00a0]+$/g;
