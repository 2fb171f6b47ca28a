/**
 * A text as one line that can be set in type and stored in any file: accents composed (NFC), control characters and line
 * ends as spaces, invisible characters that turn or hide text dropped, and what XML may not hold (half of a surrogate
 * pair, U+FFFE, U+FFFF; XML 1.0, section 2.2) as U+FFFD.
 */
export const plainLine = (text: string): string =>
  text
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Zl}\p{Zp}]/gu, ' ')
    .replace(/\p{Cf}/gu, '')
    .replace(/[\p{Cs}\uFFFE\uFFFF]/gu, '\uFFFD');
