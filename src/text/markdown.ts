import { visible } from './visible.js';

/**
 * Any text from recipes and their files as code, in which Markdown finds nothing: no link, mark-up or mention. It is fenced
 * by more backticks than it has in a row. In a cell of a table a bar ends the cell even there, so a text with bars is spelled
 * in character references.
 */
export function code(text: string): string {
  const words = visible(text);
  if (words.trim() === '' || words.includes('|')) return `<code>${referenced(words)}</code>`;
  const fence = '`'.repeat(Math.max(0, ...(words.match(/`+/g) ?? []).map(({ length }) => length)) + 1);
  const space = /^[` ]|[` ]$/.test(words) ? ' ' : '';
  return `${fence}${space}${words}${space}${fence}`;
}

/** Whatever is not a letter, a figure or a space as a reference to the character. */
const referenced = (text: string): string =>
  text.replace(/[^\p{L}\p{N} ]/gu, (character) => `&#${character.codePointAt(0)};`);
