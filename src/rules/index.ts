import type { Diagnostic, Severity } from '../diagnostics/diagnostic.js';
import type { Facts } from '../folding/facts.js';
import type { Folding } from '../folding/folding.js';
import type { Envelope } from '../recipe/recipe.js';
import { boxCorners } from './box-corners.js';
import { cardFits } from './card-fits.js';
import { creasesCross } from './creases-cross.js';
import { expectation } from './expectation.js';
import { flapCloses } from './flap-closes.js';
import { flapOnFace } from './flap-on-face.js';
import { flapShape } from './flap-shape.js';
import { fullCoverage } from './full-coverage.js';
import { linerFits } from './liner-fits.js';
import { type Look, mend } from './mend.js';
import { oppositeScores } from './opposite-scores.js';
import { postClass } from './post-class.js';
import type { Finding, Rule } from './rule.js';
import { seamHolds } from './seam-holds.js';
import { sheetHoldsBlank } from './sheet-holds-blank.js';
import { squareBlank } from './square-blank.js';
import { stiffPaper } from './stiff-paper.js';
import { tight } from './tight.js';

/** Every rule, the one with the clearest message first: what it finds may keep a later one quiet. */
export const RULES: readonly Rule[] = [
  squareBlank,
  oppositeScores,
  creasesCross,
  boxCorners,
  flapOnFace,
  flapShape,
  seamHolds,
  fullCoverage,
  flapCloses,
  cardFits,
  sheetHoldsBlank,
  linerFits,
  stiffPaper,
  postClass,
  tight,
  expectation,
];

/** What there is to say about a folded envelope, rule by rule, each finding with a remedy that was tried on it. */
export function check(envelope: Envelope, folding: Folding, facts: Facts): readonly Diagnostic[] {
  const subject = { envelope, folding, facts };
  return mend(look(subject, 'said'), subject, look);
}

/** How grave what there is to say is, without a remedy for anything: many times quicker than `check`. */
export const severitiesOf = (envelope: Envelope, folding: Folding, facts: Facts): ReadonlySet<Severity> =>
  new Set(
    look({ envelope, folding, facts }, 'said').map(({ severity, problem }) => severity ?? problem.severity),
  );

const look: Look = (subject, which) => {
  const found = new Set<string>();
  const all: Finding[] = [];
  for (const rule of RULES) {
    if (rule.quietAfter.some((name) => found.has(name))) continue;
    const findings = rule.check(subject, found);
    if (findings.length > 0 && which === 'said') found.add(rule.problem.name);
    all.push(...findings);
  }
  return all;
};
