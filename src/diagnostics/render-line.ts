import { position } from '../text/source.js';
import { visible } from '../text/visible.js';
import type { Diagnostic } from './diagnostic.js';

/** A line for each finding, for editors and searches: `file:line:column: severity: rule: message`. */
export const renderLine = (diagnostics: readonly Diagnostic[]): string =>
  diagnostics
    .map(({ problem, severity, message, primary: { span } }) => {
      const { line, column } = position(span.source, span.start);
      return `${visible(span.source.name)}:${line}:${column}: ${severity}: ${problem.name}: ${visible(message)}\n`;
    })
    .join('');
