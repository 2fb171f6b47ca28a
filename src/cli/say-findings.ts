import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { renderText } from '../diagnostics/render-text.js';
import type { Host } from '../host/host.js';
import type { Arguments } from './arguments.js';
import { paletteFor } from './palette.js';

/** Findings met by a command that was asked for something else: on standard error. */
export async function sayFindings(
  diagnostics: readonly Diagnostic[],
  given: Arguments,
  host: Host,
): Promise<void> {
  if (diagnostics.length === 0) return;
  host.err.write(renderText(diagnostics, (await paletteFor(host.err, host, given)) ?? undefined));
}
