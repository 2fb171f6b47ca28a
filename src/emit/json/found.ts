import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import { position } from '../../text/source.js';

/** A finding as the facts JSON has it. Lines and columns from 1, columns in code points. */
export interface Found {
  readonly rule: string;
  readonly severity: Diagnostic['severity'];
  readonly message: string;
  readonly why: string | null;
  readonly help: string | null;
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/** `file`: what its file is called there; left out, the name that it was given by. */
export function found(
  { problem, severity, message, why, help, primary: { span } }: Diagnostic,
  file: string = span.source.name,
): Found {
  const { line, column } = position(span.source, span.start);
  return { rule: problem.name, severity, message, why, help, file, line, column };
}
