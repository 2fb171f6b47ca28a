/** Stands for a character that the font lacks: an open box, or a question mark where even that is missing. */
const STAND_INS = [0x25a1, 0x3f];

/**
 * A text as one line that a font can show: control characters and line ends become spaces, invisible ones that turn or
 * hide text are dropped, and characters without a glyph are shown as open boxes.
 */
export function printable(text: string, hasGlyph: (codePoint: number) => boolean): string {
  const standIn = String.fromCodePoint(STAND_INS.find(hasGlyph) ?? 0x20);
  return [...text.normalize('NFC')]
    .map((character) => {
      if (/[\p{Cc}\p{Zl}\p{Zp}]/u.test(character)) return ' ';
      if (/\p{Cf}/u.test(character)) return '';
      return hasGlyph(character.codePointAt(0) ?? 0) ? character : standIn;
    })
    .join('');
}
