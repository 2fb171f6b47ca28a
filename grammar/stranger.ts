import type { Diagnostic } from '../src/diagnostics/diagnostic.js';
import { report } from '../src/diagnostics/problem.js';
import { syntax } from '../src/syntax/problems.js';
import type { Source } from '../src/text/source.js';

/** The finding about a text that begins as something else does, which would have a slip in every line; null: it may be a recipe. */
export function strangerIn(source: Source): Diagnostic | null {
  const [, what] = STRANGERS.find(([begins]) => begins.test(source.text)) ?? [];
  if (what === undefined) return null;
  const start = source.text.search(/\S/);
  return report(syntax, {
    message: `this is ${what}, not a recipe`,
    at: { source, start, end: start + 1 },
    help: 'give a recipe in its stead: it begins with `units in` or `units mm`',
  });
}

/** How what is often taken for a recipe begins, what `build` writes among it (DXF's group codes from memory). */
const STRANGERS: readonly (readonly [begins: RegExp, what: string])[] = [
  [/^\s*<(?:\?xml|svg)\b/i, 'a drawing (SVG)'],
  [/^\s*<(?:!doctype|html)\b/i, 'a page (HTML)'],
  [/^\s*[{[]\s*["{[]/, 'data for a program (JSON)'],
  [/^\s*(?:999\r?\n.*\r?\n\s*)?0\r?\n\s*SECTION\b/, 'a drawing (DXF)'],
];
