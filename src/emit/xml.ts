import { printShort } from '../measure/number.js';
import { plainLine } from '../text/plain-line.js';

/** Values of attributes by name; numbers are printed with at most four decimals. */
export type Attributes = Readonly<Record<string, string | number>>;

/** An element: around one text, or around other elements, each on lines of its own. */
export function element(
  name: string,
  attributes: Attributes,
  content: string | readonly string[] = '',
): string {
  const opening = [
    name,
    ...Object.entries(attributes).map(
      ([key, value]) => `${key}="${escaped(typeof value === 'number' ? number(value) : value)}"`,
    ),
  ].join(' ');
  if (content.length === 0) return `<${opening}/>`;
  const inner = typeof content === 'string' ? content : `\n${content.join('\n')}\n`;
  return `<${opening}>${inner}</${name}>`;
}

/** Any text as the content of an element: one plain line, marks of the language spelled out. */
export const text = (words: string): string => escaped(plainLine(words));

/** A ten-thousandth of a mm is finer than any machine that cuts; never an exponent. */
export const number = (value: number): string => printShort(value, 4);

const escaped = (value: string): string =>
  value.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
