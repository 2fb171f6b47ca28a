import { printShort } from '../measure/number.js';
import { visible } from '../text/visible.js';

/** So that spreadsheet programs read UTF-8, which RFC 4180 leaves open. */
export const BYTE_ORDER_MARK = '\ufeff';

/** A field of a table: a figure or a count as a number, anything else as text; null or undefined is nothing. */
export type Field = string | number | null | undefined;

/** One line as RFC 4180 has it, with its line end. */
export const csvLine = (fields: readonly Field[]): string => `${fields.map(spelled).join(',')}\r\n`;

function spelled(field: Field): string {
  if (field === null || field === undefined) return '';
  if (typeof field === 'number') return printShort(field, DECIMALS);
  const seen = visible(field);
  const text = FORMULA.test(seen) ? `'${seen}` : seen;
  return /[",]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Thousandths of a mm or a g: no noise, and finer than any hand. */
const DECIMALS = 3;

/** What a spreadsheet program would take for a formula; an apostrophe before it makes it a text there. */
const FORMULA = /^\s*[=+\-@|%]/;
