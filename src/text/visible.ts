/**
 * A text with every character that could move the cursor, hide, or turn the line round spelled out (`\u{1b}`): control
 * characters, direction marks, invisible spaces and letters, lone surrogates. Tabs and line ends become spaces.
 */
export const visible = (text: string): string =>
  withUnseen(
    text.replace(/[\t\n\r]+/g, ' '),
    (character) => `\\u{${(character.codePointAt(0) ?? 0).toString(16)}}`,
  );

/** A text with each character that `visible` spells out, line ends and tabs among them, put as it is told. */
export const withUnseen = (text: string, put: (character: string) => string): string =>
  PLAIN.test(text) ? text : text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]|(?!\p{VS})\p{DI}/gu, put);

/** Nearly every text: asked first, as what cannot be seen is costly to list. */
const PLAIN = /^[ -~]*$/;
