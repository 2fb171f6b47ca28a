import type { Diagnostic } from '../src/diagnostics/diagnostic.js';
import { type Report, report } from '../src/diagnostics/problem.js';
import { syntax } from '../src/syntax/problems.js';

/** A `syntax` finding; whatever is quoted of the text is cropped to a length that can be read. */
export const slip = (what: Report): Diagnostic =>
  report(syntax, {
    ...what,
    message: cropped(what.message),
    ...(what.help === undefined ? {} : { help: cropped(what.help) }),
    ...(what.why === undefined ? {} : { why: cropped(what.why) }),
  });

const cropped = (text: string): string =>
  text.replace(/`([^`]*)`/g, (quote, inner: string) =>
    inner.length > 60 ? `\`${inner.slice(0, 59)}…\`` : quote,
  );
