/** What tells git which files are recipes. */
export const ATTRIBUTES_LINE = '*.plica diff=plica';

/**
 * An attributes file (null: there is none) with the line that is ours; the same text where it says as much already. A last
 * line without an end stays one: then ours has none either, so that what was there can be told from what was not.
 */
export function withLine(text: string | null): string {
  if (text === null) return `${ATTRIBUTES_LINE}\n`;
  if (text.split('\n').some(saysAsMuch)) return text;
  if (text === '') return ATTRIBUTES_LINE;
  return text.endsWith('\n') ? text + ATTRIBUTES_LINE + endOf(text) : text + endOf(text) + ATTRIBUTES_LINE;
}

/** The file without it, as it was before; null: it was made for the line alone. */
export function withoutLine(text: string): string | null {
  if (text === `${ATTRIBUTES_LINE}\n`) return null;
  const kept = text.split(/(?<=\n)/).filter((line) => !isOurs(line));
  const rest = kept.join('');
  const wasLast = text.endsWith(ATTRIBUTES_LINE) && rest !== text;
  return wasLast ? withoutEnd(rest) : rest;
}

const isOurs = (line: string): boolean => line.replace(/\r?\n$/, '') === ATTRIBUTES_LINE;

function saysAsMuch(line: string): boolean {
  const [pattern, ...attributes] = line.trim().split(/[ \t]+/);
  return pattern === '*.plica' && attributes.includes('diff=plica');
}

/** How lines of a text end. */
const endOf = (text: string): string => (text.includes('\r\n') ? '\r\n' : '\n');

/** Takes off the end that `withLine` set. */
function withoutEnd(text: string): string {
  const open = text.replace(/\n$/, '');
  return endOf(open) === '\r\n' ? open.replace(/\r$/, '') : open;
}
