import { jsonText } from '../../text/json-text.js';

/** JSON that ends in a line end, with a line for each key of an object and for each list in a list. */
export const layOut = (value: object): string => `${laidOut(value, '')}\n`;

function laidOut(value: unknown, indent: string): string {
  if (typeof value !== 'object' || value === null || isRow(value)) return jsonText(value);
  const deeper = `${indent}  `;
  const [open, close] = Array.isArray(value) ? '[]' : '{}';
  const items = Array.isArray(value)
    ? value.map((item) => laidOut(item, deeper))
    : Object.entries(value).map(([key, item]) => `${jsonText(key)}: ${laidOut(item, deeper)}`);
  return `${open}\n${items.map((item) => deeper + item).join(',\n')}\n${indent}${close}`;
}

/** A list of numbers and words alone. */
const isRow = (value: object): boolean =>
  Array.isArray(value) && value.every((item) => typeof item !== 'object' || item === null);
