/** Characters that look like a space, or like nothing, but are not the one a keyboard types. */
const oddSpace = /[\u000b\u000c\u0085\u00a0\u1680\u2000-\u200b\u2028\u2029\u202f\u205f\u2060\u3000\ufeff]/;
const everyOddSpace = new RegExp(oddSpace, 'g');
const byteOrderMark = '\ufeff';

/** The same text, every offset kept, with plain spaces in their stead. */
export const withPlainSpaces = (text: string): string =>
  oddSpace.test(text) ? text.replace(everyOddSpace, ' ') : text;

/** Where they are, a byte order mark at the beginning apart. */
export function* oddSpaces(text: string): Iterable<number> {
  for (const { index } of text.matchAll(everyOddSpace)) {
    if (index > 0 || !text.startsWith(byteOrderMark)) yield index;
  }
}

const names: ReadonlyMap<number, string> = new Map([
  [0x0027, 'an apostrophe'],
  [0x0058, 'a capital'],
  [0x0060, 'a back quote'],
  [0x00a0, 'a no-break space'],
  [0x00ad, 'a soft hyphen'],
  [0x0425, 'a letter of another alphabet'],
  [0x0445, 'a letter of another alphabet'],
  [0x2013, 'an en dash'],
  [0x2014, 'an em dash'],
  [0x2018, 'a curly quote'],
  [0x2019, 'a curly quote'],
  [0x201c, 'a curly quote'],
  [0x201d, 'a curly quote'],
  [0x201e, 'a low quote'],
  [0x2032, 'a prime'],
  [0x2033, 'a double prime'],
  [0x200b, 'a space of no width'],
  [0x202f, 'a narrow no-break space'],
  [0x2060, 'a space of no width'],
  [0x2212, 'a mathematical minus'],
  [0x3000, 'a wide space'],
  [0xfeff, 'a byte order mark'],
]);

/** What people call a character, or its number: `a no-break space (U+00A0)`. */
export function characterName(code: number): string {
  const number = `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
  const name = names.get(code);
  return name === undefined ? number : `${name} (${number})`;
}
