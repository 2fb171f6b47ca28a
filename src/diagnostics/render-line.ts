import { position } from '../text/source.js';
import type { Span } from '../text/span.js';
import { visible } from '../text/visible.js';
import type { Diagnostic } from './diagnostic.js';

/** A line for each finding, for editors and searches: `file:line:column: severity: rule: message`. */
export const renderLine = (diagnostics: readonly Diagnostic[]): string =>
  diagnostics
    .map(
      ({ problem, severity, message, primary }) =>
        `${placeIn(primary.span)}: ${severity}: ${problem.name}: ${visible(message)}\n`,
    )
    .join('');

/** `file:line:column` */
export function placeIn({ source, start }: Span): string {
  const { line, column } = position(source, start);
  return `${visible(source.name)}:${line}:${column}`;
}
