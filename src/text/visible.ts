/**
 * A text with every character that could move the cursor, hide, or turn the line round spelled out (`\u{1b}`): control
 * characters, direction marks, invisible spaces and letters, lone surrogates. Tabs and line ends become spaces.
 */
export const visible = (text: string): string =>
  text
    .replace(/[\t\n\r]+/g, ' ')
    .replace(UNSEEN, (character) => `\\u{${(character.codePointAt(0) ?? 0).toString(16)}}`);

/** What `visible` spells out, line ends and tabs among it. */
export const UNSEEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]|(?!\p{VS})\p{DI}/gu;
