import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import { report } from '../../diagnostics/problem.js';
import { type Span, spanText } from '../../text/span.js';
import { unknownName } from '../problems.js';

/** `80 g / m2` where `m2` names nothing: grams for a square metre; null of any other word. */
export function gramsForMetre(word: Span): Diagnostic | null {
  const before = spanText({ ...word, start: Math.max(0, word.start - LONGEST), end: word.start });
  const [, count, unit] = (METRE.test(spanText(word)) && GRAMS.exec(before)) || [];
  if (count === undefined || unit === undefined) return null;
  const start = word.start - unit.length;
  return report(unknownName, {
    message: 'grams for a square metre are written `gsm`',
    at: { ...word, start },
    help: `write \`${count} gsm\``,
    fix: [{ span: { ...word, start }, text: /\d$/.test(before.slice(0, -unit.length)) ? ' gsm' : 'gsm' }],
  });
}

const METRE = /^(?:m2|sqm|qm)$/i;
const GRAMS = /(\d+(?:\.\d+)?)[ \t]*(g[ \t]*\/[ \t]*)$/;
/** Characters that are looked at before the word. */
const LONGEST = 40;
