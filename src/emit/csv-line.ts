import { visible } from '../text/visible.js';

/** A field of a table: a figure or a count as a number, anything else as text; null is nothing. */
export type Field = string | number | null;

/** One line as RFC 4180 has it, with its line end. */
export const csvLine = (fields: readonly Field[]): string => `${fields.map(spelled).join(',')}\r\n`;

function spelled(field: Field): string {
  if (field === null) return '';
  if (typeof field === 'number') return `${field}`;
  const seen = visible(field);
  const text = FORMULA.test(seen) ? `'${seen}` : seen;
  return /[",]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** What a spreadsheet program would take for a formula; an apostrophe before it makes it a text there. */
const FORMULA = /^\s*[=+\-@|%]/;
