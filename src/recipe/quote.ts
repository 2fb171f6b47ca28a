import { type Span, spanText } from '../text/span.js';

/** Beyond this a quotation is cut: a finding stays a line even where a number has ten thousand digits. */
const LONGEST = 48;

/** The text of a span in backticks, on one line, shortened. */
export const quote = (span: Span): string =>
  quoteText(spanText({ ...span, end: Math.min(span.end, span.start + 4 * LONGEST) }));

/** The same of any text. */
export function quoteText(text: string): string {
  const line = text.replace(/\s+/g, ' ');
  return `\`${line.length > LONGEST ? `${line.slice(0, LONGEST - 1)}…` : line}\``;
}
