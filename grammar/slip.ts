import type { Diagnostic } from '../src/diagnostics/diagnostic.js';
import { type Report, report } from '../src/diagnostics/problem.js';
import { syntax } from '../src/syntax/problems.js';
import { is, type Token } from './token.js';
import { Eol } from './tokens.js';

/** A `syntax` finding; whatever is quoted of the text is cropped to a length that can be read. */
export const slip = (what: Report): Diagnostic =>
  report(syntax, {
    ...what,
    message: cropped(what.message),
    ...(what.help === undefined ? {} : { help: cropped(what.help) }),
    ...(what.why === undefined ? {} : { why: cropped(what.why) }),
  });

/** Whatever is quoted, shortened to what can be read. */
export const cropped = (text: string): string =>
  text.replace(/`([^`]*)`/g, (quote, inner: string) =>
    inner.length > 60 ? `\`${inner.slice(0, 59)}…\`` : quote,
  );

/** How a message names a token. */
export function shown(token: Token | undefined): string {
  if (token === undefined || token.image === '' || is(token, Eol)) return 'the end of the line';
  return `\`${token.image}\``;
}

/** `a`, `a or b`, `a, b or c`, each in back quotes. */
export function either(readings: readonly string[]): string {
  const quoted = readings.map((reading) => `\`${reading}\``);
  return quoted.length < 2 ? quoted.join() : `${quoted.slice(0, -1).join(', ')} or ${quoted.at(-1)}`;
}

/** Slips after which a text is no recipe. */
export const mostSlips = 1000;
