import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { report } from '../diagnostics/problem.js';
import { printNumber, printShort } from '../measure/number.js';
import { stated } from './gathered.js';
import type { Gathered } from './likes.js';
import type { Stated } from './origin.js';
import { likeliest, otherCalipers, otherWeights, type Reading } from './meant/other-readings.js';
import { range } from './problems.js';
import { quote, quoteText } from './quote.js';

/**
 * g/cm³. The lists in test/reference/paper.tsv run from 0.5 to 1.24; the outer bounds leave room below for papers made
 * by hand, and end above at solid cellulose, about 1.5 (from memory).
 */
const DENSITY = { lightest: 0.35, light: 0.5, usual: 0.8, dense: 1.25, densest: 1.5 };

/** mm. The same lists run from 0.08 to 0.75; tissue is about 0.03 (from memory). */
const CALIPER = { thinnest: 0.02, thin: 0.08, usual: 0.15, thick: 0.75, thickest: 1 };

/** What no paper is: most likely a unit is wrong. Spoken of in the paper that states one of the figures itself. */
export function doubtPaper(gathered: Gathered): Diagnostic | null {
  const weight = stated(gathered, 'weight');
  const caliper = stated(gathered, 'caliper');
  if (caliper === null || caliper.value === 0) return null;
  if (weight !== null) return doubtDensity(weight, caliper);
  return caliper.origin.kind === 'written' ? doubtCaliper(caliper) : null;
}

/** A weight and a caliper that no paper has together. */
function doubtDensity(weight: Stated<number>, caliper: Stated<number>): Diagnostic | null {
  const density = densityOf(weight.value, caliper.value);
  const written = [weight, caliper].some(({ origin }) => origin.kind === 'written');
  if (!written || (DENSITY.lightest <= density && density <= DENSITY.densest)) return null;
  const possible = (found: number): boolean => DENSITY.light <= found && found <= DENSITY.dense;
  const heavy = likeliest(otherWeights(weight.origin.span), DENSITY.usual * caliper.value * 1000, (value) =>
    possible(densityOf(value, caliper.value)),
  );
  const thick = likeliest(otherCalipers(caliper.origin.span), weight.value / DENSITY.usual / 1000, (value) =>
    possible(densityOf(weight.value, value)),
  );
  const caliperIsWrong = weight.origin.kind !== 'written' || (thick !== undefined && heavy === undefined);
  const [at, other] = caliperIsWrong ? [caliper, weight] : [weight, caliper];
  const meant = [
    ...(heavy ? [`\`weight: ${heavy.text}\`${worth(heavy, 'gsm', 1)}`] : []),
    ...(thick ? [`\`caliper: ${thick.text}\`${worth(thick, 'mm', 3)}`] : []),
  ];
  return report(range, {
    severity: 'warning',
    message: `at ${quote(weight.origin.span)} and ${quote(caliper.origin.span)} this would be ${density < DENSITY.lightest ? 'lighter' : 'denser'} than any paper`,
    at: at.origin.span,
    related: [
      {
        span: other.origin.span,
        text: `${caliperIsWrong ? 'the weight' : 'the caliper'}${other.origin.kind === 'inherited' ? `, from ${quoteText(other.origin.from)}` : ''}`,
      },
    ],
    why: `${printShort(weight.value, 1)} gsm over ${printShort(caliper.value, 4)} mm is ${density < 0.01 ? 'less than 0.01' : printNumber(density, 2)} g/cm³; papers run from about ${DENSITY.light} to ${DENSITY.dense}`,
    help:
      meant.length > 0
        ? `did you mean ${meant.join(', or ')}?`
        : 'look at both units: the weight is on the wrapper, the caliper is of one sheet',
  });
}

/** g/cm³ of so many g/m² on so many mm. */
const densityOf = (gsm: number, mm: number): number => gsm / mm / 1000;

/** What a reading comes to, unless it says so itself. */
const worth = ({ text, value }: Reading, unit: string, decimals: number): string =>
  text.endsWith(` ${unit}`) ? '' : `, which is ${printShort(value, decimals)} ${unit}`;

/** A caliper that no paper has, whatever it weighs. */
function doubtCaliper({ value, origin: { span } }: Stated<number>): Diagnostic | null {
  if (CALIPER.thinnest <= value && value <= CALIPER.thickest) return null;
  const meant = likeliest(
    otherCalipers(span),
    CALIPER.usual,
    (mm) => CALIPER.thin <= mm && mm <= CALIPER.thick,
  );
  return report(range, {
    severity: 'warning',
    message: `a caliper of ${quote(span)} is ${value > CALIPER.thickest ? 'thicker' : 'thinner'} than any paper that a hand folds`,
    at: span,
    why: `it is ${printShort(value, 4)} mm; papers and card run from about ${CALIPER.thin} to ${CALIPER.thick} mm`,
    help: meant
      ? `did you mean \`caliper: ${meant.text}\`${worth(meant, 'mm', 3)}?`
      : 'look at its unit: the caliper is of one sheet',
  });
}
