import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { syntax } from '../syntax/problems.js';
import { type Span, spanText } from '../text/span.js';
import { unknownName, unknownProperty } from './problems.js';

/** Findings without those that another makes idle: a name of several words that nothing has needs no hyphens either. */
export function saidOnce(findings: readonly Diagnostic[]): readonly Diagnostic[] {
  const unknown = findings.filter(
    ({ problem, primary: { span } }) =>
      (problem === unknownName || problem === unknownProperty) && SEVERAL.test(spanText(span)),
  );
  const places = new Set(unknown.map(({ primary }) => placeOf(primary.span)));
  return findings.filter(({ problem, primary }) => problem !== syntax || !places.has(placeOf(primary.span)));
}

const SEVERAL = /^[a-z\d-]+(?:[ _\t]+[a-z\d-]+)+$/i;

const placeOf = ({ source, start, end }: Span): string => `${start} ${end} ${source.name}`;
