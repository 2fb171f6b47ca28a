import { plainLine } from '../../text/plain-line.js';

/** Stands for a character that the font lacks: an open box, or a question mark where even that is missing. */
const STAND_INS = [0x25a1, 0x3f];

/** A text as one plain line that a font can show: characters without a glyph are shown as open boxes. */
export function printable(text: string, hasGlyph: (codePoint: number) => boolean): string {
  const standIn = String.fromCodePoint(STAND_INS.find(hasGlyph) ?? 0x20);
  return [...plainLine(text)]
    .map((character) => (hasGlyph(character.codePointAt(0) ?? 0) ? character : standIn))
    .join('');
}
