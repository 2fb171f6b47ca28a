import { position } from '../text/source.js';
import type { Span } from '../text/span.js';
import type { Diagnostic } from './diagnostic.js';

/** The findings for programs. Lines and columns from 1, columns in code points; an unknown is null. */
export function renderJson(diagnostics: readonly Diagnostic[]): string {
  const findings = diagnostics.map((found) => {
    const { line: endLine, column: endColumn } = position(found.primary.span.source, found.primary.span.end);
    return {
      rule: found.problem.name,
      severity: found.severity,
      message: found.message,
      why: found.why,
      help: found.help,
      ...place(found.primary.span),
      endLine,
      endColumn,
      related: found.related.map(({ span, text }) => ({ message: text, ...place(span) })),
    };
  });
  return `${JSON.stringify({ format: 'plica-findings', version: 1, findings }, null, 2)}\n`;
}

function place(span: Span): { readonly file: string; readonly line: number; readonly column: number } {
  return { file: span.source.name, ...position(span.source, span.start) };
}
