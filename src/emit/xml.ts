import { printShort } from '../measure/number.js';
import { element as markup, escaped } from '../text/markup.js';
import { plainLine } from '../text/plain-line.js';

/** Values of attributes by name; numbers are printed with at most four decimals. */
export type Attributes = Readonly<Record<string, string | number>>;

/** An element: around one text, or around other elements, each on lines of its own. */
export const element = (
  name: string,
  attributes: Attributes,
  content: string | readonly string[] = '',
): string => {
  const values = Object.entries(attributes).map(([key, value]) => [
    key,
    typeof value === 'number' ? number(value) : value,
  ]);
  return markup(name, Object.fromEntries(values), content);
};

/** Any text as the content of an element: one plain line, marks of the language spelled out. */
export const text = (words: string): string => escaped(plainLine(words));

/** A ten-thousandth of a mm is finer than any machine that cuts; never an exponent. */
export const number = (value: number): string => printShort(value, 4);
