import { jsonText } from '../text/json-text.js';
import type { Span } from '../text/span.js';
import type { Diagnostic } from './diagnostic.js';
import { problemsIn } from './problem.js';
import { region } from './region.js';

/**
 * The findings for programs, and what is known of each rule among them. Lines and columns from 1, columns in code points;
 * an unknown is null.
 */
export function renderJson(diagnostics: readonly Diagnostic[]): string {
  const rules = problemsIn(diagnostics).map(({ name, severity, meaning, matters, remedy }) => ({
    rule: name,
    severity,
    meaning,
    matters,
    remedy,
  }));
  const findings = diagnostics.map(findingOf);
  return `${jsonText({ format: 'plica-findings', version: 1, findings, rules }, 2)}\n`;
}

/** One finding as plain data. */
export const findingOf = ({ problem, severity, message, primary, why, help, related, fix }: Diagnostic) => ({
  rule: problem.name,
  severity,
  message,
  label: primary.text === '' ? null : primary.text,
  why,
  help,
  ...placeOf(primary.span),
  related: related.map(({ span, text }) => ({ message: text, ...placeOf(span) })),
  fix: fix && fix.map(({ span, text }) => ({ ...placeOf(span), text })),
});

/** A stretch of a text as plain data. */
export const placeOf = (span: Span) => ({ file: span.source.name, ...region(span) });
