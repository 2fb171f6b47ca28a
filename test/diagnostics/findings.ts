import { type Report, report } from '../../src/diagnostics/problem.js';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import { source, type Source } from '../../src/text/source.js';
import type { Span } from '../../src/text/span.js';

export const styles = source(
  'house/styles.plica',
  'units in\n\nstyle house {\n  ease: 1/4\n  seam: 1/2\n}\n',
);

export const recipe = source(
  'tides.plica',
  'units in\nuse "house/styles.plica"\n\nenvelope tide-table like house {\n  card: 8 1/2 x 5 1/2\n  blank: 10\n}\n',
);

/** Where a piece of text stands first. */
export function spanAt(given: Source, piece: string): Span {
  const start = given.text.indexOf(piece);
  return { source: given, start, end: start + piece.length };
}

export const finding = (what: Partial<Report> & Pick<Report, 'at'>): Diagnostic =>
  report(
    {
      name: 'creases-cross',
      severity: 'error',
      meaning: '',
      matters: '',
      remedy: '',
      example: { wrong: '', mended: '' },
    },
    { message: 'the scores do not cross', ...what },
  );
