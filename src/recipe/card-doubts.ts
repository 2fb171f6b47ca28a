import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { report } from '../diagnostics/problem.js';
import { printShort } from '../measure/number.js';
import { MM_PER } from '../measure/unit.js';
import { spanText } from '../text/span.js';
import { range } from './problems.js';
import { quoteText } from './quote.js';
import type { Envelope } from './recipe.js';

/** The longer side of a folded card, in mm: a stamp is longer than the least, no sheet that is sold folds to the most (our judgement). */
const SIDE = { least: 20, most: 1000 };

/** A card that no hand folds or nobody posts: most likely its numbers are of another unit than the file's. */
export function doubtCard({ card, units }: Envelope): Diagnostic | null {
  const { value, origin } = card;
  const longer = Math.max(value.width, value.height);
  if (origin.kind !== 'written' || isUsual(longer)) return null;
  const written = spanText(origin.span);
  const meant = BARE.test(written)
    ? MEANT.find((unit) => unit !== units && isUsual((longer / MM_PER[units]) * MM_PER[unit]))
    : undefined;
  return report(range, {
    severity: 'warning',
    message: `${quoteText(written)} is ${longer < SIDE.least ? 'smaller' : 'larger'} than any card that is put into an envelope`,
    at: origin.span,
    why: `it is ${printShort(value.width, 1)} × ${printShort(value.height, 1)} mm${BARE.test(written) ? `; a bare number is read in the \`units\` of its file, here \`${units}\`` : ''}`,
    help: meant
      ? `did you mean \`card: ${written} ${meant}\`?`
      : 'look at its unit, and at the `units` of the file',
  });
}

const isUsual = (mm: number): boolean => SIDE.least <= mm && mm <= SIDE.most;

/** Two sides in digits, without a unit. */
const BARE = /^[\d./\s½¼¾]+[x×][\d./\s½¼¾]+$/;

/** What is likelier stands first. */
const MEANT = ['in', 'mm', 'cm'] as const;
