/** How many columns of a terminal a character takes: 0 for one set on the character before it, 2 for a wide one. */
export function columns(character: string): 0 | 1 | 2 {
  if (/^[ -~]$/.test(character)) return 1;
  if (/^[\p{Mn}\p{Me}]/u.test(character)) return 0;
  return WIDE.test(character) ? 2 : 1;
}

/** How many columns a text takes. */
export const columnsOf = (text: string): number =>
  [...text].reduce((sum, character) => sum + columns(character), 0);

/** The blocks that Unicode's East Asian Width (UAX #11) counts as wide, and signs shown as pictures. From memory. */
const WIDE =
  /^(?:[\u1100-\u115f\u2e80-\u303e\u3041-\u33ff\u3400-\u4dbf\u4e00-\u9fff\ua000-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]|[\u{20000}-\u{3fffd}]|\p{Emoji_Presentation})/u;
