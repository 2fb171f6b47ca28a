/**
 * A value as JSON, with every character that could move the cursor, hide, or turn the line round as an escape. What reads
 * it reads the same value.
 */
export const jsonText = (value: unknown, indent = 0): string =>
  // Control characters below 0x20, and halves of surrogate pairs, `JSON.stringify` escapes by itself.
  JSON.stringify(value, null, indent).replace(/[\u007f-\u009f\p{Cf}\p{Zl}\p{Zp}]/gu, escaped);

/** One escape, or two for a character beyond U+FFFF. */
const escaped = (character: string): string =>
  character
    .split('')
    .map((unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
    .join('');
