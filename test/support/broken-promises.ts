import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import { renderJson } from '../../src/diagnostics/render-json.js';
import { renderLine } from '../../src/diagnostics/render-line.js';
import { renderText } from '../../src/diagnostics/render-text.js';
import type { Span } from '../../src/text/span.js';
import { type Beside, compileText } from './compile-text.js';

/** Compiles a text, and names the promises that `check` breaks by it. */
export function brokenPromises(text: string, beside: Beside): readonly string[] {
  const { diagnostics } = compileText(text, beside);
  return Object.entries(PROMISES).flatMap(([promise, keeps]) => (keeps(diagnostics, text) ? [] : promise));
}

/** Signs that move a cursor, hide, or turn a line round. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]/u;

/** What `check` promises of its findings, whatever the text. */
const PROMISES: Readonly<Record<string, (found: readonly Diagnostic[], text: string) => boolean>> = {
  'every place lies in its text': (found) => found.flatMap(spansOf).every(liesInItsText),
  'findings in one file are in the order of its text': (found) =>
    found.every(({ primary: { span } }, index) => {
      const before = found[index - 1]?.primary.span ?? span;
      return before.source.name !== span.source.name || before.start <= span.start;
    }),
  'nothing is said twice of one place': (found) => new Set(found.map(ruleAndPlaces)).size === found.length,
  'there are no more findings than signs in the text': (found, { length }) => found.length <= length,
  'a message is a sentence without a full stop': (found) =>
    found.every(({ message }) => /\S/.test(message) && !/\.$|undefined|NaN|\[object/.test(message)),
  'for editors: a line for each, with nothing unseen': (found) => {
    const lines = renderLine(found).split('\n');
    return lines.length === found.length + 1 && !lines.some((line) => UNSEEN.test(line));
  },
  'for people: nothing unseen but the ends of lines': (found) =>
    !UNSEEN.test(renderText(found).replaceAll('\n', '')),
  'for programs: the same messages, read back': (found) => {
    const { findings } = JSON.parse(renderJson(found)) as { findings: readonly { message: string }[] };
    return findings.map(({ message }) => message).join() === found.map(({ message }) => message).join();
  },
};

const spansOf = ({ primary, related, fix }: Diagnostic): readonly Span[] =>
  [primary, ...related, ...(fix ?? [])].map(({ span }) => span);

const liesInItsText = ({ source, start, end }: Span): boolean =>
  0 <= start && start <= end && end <= source.text.length;

/** A rule, how severe it is, and where; for what a style expects, the place is the envelope's and the expectation's. */
const ruleAndPlaces = ({ problem, severity, primary, related }: Diagnostic): string =>
  [
    problem.name,
    severity,
    ...[primary, ...related].map(({ span }) => `${span.source.name} ${span.start} ${span.end}`),
  ].join();
