/** Characters that look like a space but are not the one a keyboard types. */
const spaces = '\\u000b\\u000c\\u0085\\u00a0\\u1680\\u2000-\\u200a\\u2028\\u2029\\u202f\\u205f\\u3000';
/** Characters that cannot be seen at all: of no width, or there to turn the direction of writing. */
const unseen = '\\u00ad\\u061c\\u200b-\\u200f\\u202a-\\u202e\\u2060-\\u2064\\u2066-\\u2069\\ufeff';
/** The wide forms of plain characters; a wide quote and a wide `#` may stand in a string or begin one. */
const wide = '\\uff01\\uff04-\\uff3b\\uff3d-\\uff5e';

const everyOdd = new RegExp(`[${spaces}${unseen}${wide}]`, 'g');
const anySpace = new RegExp(`[${spaces}]`);
const anyUnseen = new RegExp(`[${unseen}]`);
const byteOrderMark = '\ufeff';

/** Stands in for what cannot be seen while a text is scanned: it parts no word. */
export const unseenMark = '\u200b';

/** How an odd character is typed: as a space, not at all, or as its plain form. */
export type Oddness = 'space' | 'unseen' | 'wide';

export const oddness = (character: string): Oddness =>
  anySpace.test(character) ? 'space' : anyUnseen.test(character) ? 'unseen' : 'wide';

/** What is typed instead of an odd character. */
export const plainForm = (character: string): string => {
  const kind = oddness(character);
  if (kind === 'wide') return String.fromCharCode(character.charCodeAt(0) - 0xfee0);
  return kind === 'space' ? ' ' : '';
};

/** The same text, every offset kept, with plain characters in their stead. */
export const withPlainCharacters = (text: string): string =>
  text.replace(everyOdd, (character) => plainForm(character) || unseenMark);

/** Where they are, a byte order mark at the beginning apart. */
export function* oddCharacters(text: string): Iterable<number> {
  for (const { index } of text.matchAll(everyOdd)) {
    if (index > 0 || !text.startsWith(byteOrderMark)) yield index;
  }
}

const turns = 'a mark that turns the writing';

const names: ReadonlyMap<number, string> = new Map([
  [0x0000, 'a null character'],
  [0x001b, 'an escape character'],
  [0x0027, 'an apostrophe'],
  [0x0058, 'a capital'],
  [0x0060, 'a back quote'],
  [0x00a0, 'a no-break space'],
  [0x00ad, 'a soft hyphen'],
  [0x0425, 'a letter of another alphabet'],
  [0x0445, 'a letter of another alphabet'],
  [0x200b, 'a space of no width'],
  [0x200c, 'a joiner of no width'],
  [0x200d, 'a joiner of no width'],
  ...[0x061c, 0x200e, 0x200f, 0x202a, 0x202b, 0x202c, 0x202d, 0x202e].map((code) => [code, turns] as const),
  ...[0x2066, 0x2067, 0x2068, 0x2069].map((code) => [code, turns] as const),
  [0x2013, 'an en dash'],
  [0x2014, 'an em dash'],
  [0x2018, 'a curly quote'],
  [0x2019, 'a curly quote'],
  [0x201c, 'a curly quote'],
  [0x201d, 'a curly quote'],
  [0x201e, 'a low quote'],
  [0x2032, 'a prime'],
  [0x2033, 'a double prime'],
  [0x2028, 'a line end of elsewhere'],
  [0x2029, 'a line end of elsewhere'],
  [0x202f, 'a narrow no-break space'],
  [0x2060, 'a space of no width'],
  [0x2212, 'a mathematical minus'],
  [0x3000, 'a wide space'],
  [0xfeff, 'a byte order mark'],
  [0xff02, 'a wide quote'],
]);

/** What people call a character, or its number: `a no-break space (U+00A0)`. */
export function characterName(code: number): string {
  const number = `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
  const name = names.get(code) ?? (code >= 0xff01 && code <= 0xff5e ? 'a wide form' : undefined);
  return name === undefined ? number : `${name} (${number})`;
}
