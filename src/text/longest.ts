/** The longest text that is read: bytes of a file, or UTF-16 units of a text (a file never has fewer bytes than units). */
export const LONGEST_TEXT = 1_000_000;

/** The longest word that is read, in letters, digits and hyphens. */
export const LONGEST_WORD = 60;
