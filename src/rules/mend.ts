import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { type Problem, report } from '../diagnostics/problem.js';
import { restate, type Statements } from '../recipe/restate.js';
import { folded } from './folded.js';
import type { Offer } from './offer.js';
import type { Trial } from './remedy.js';
import type { Finding, Subject } from './rule.js';

/** What the rules find in an envelope: what is said of it, each mistake once, or all that there is. */
export type Look = (subject: Subject, which: 'said' | 'all') => readonly Finding[];

/** How many remedies a finding offers. */
const OFFERS = 2;

/** How many statements are tried for a finding, at most; a recipe wrong in many ways would take seconds otherwise. */
const MOST_TRIALS = 100;

/** The findings with their help: the first of the remedies of each that serve when they are tried on the envelope. */
export function mend(findings: readonly Finding[], subject: Subject, look: Look): readonly Diagnostic[] {
  const tried = new Map<string, Tried>();
  return findings.map((finding) => {
    const { problem, remedies: _remedies, advice, about: _about, sure, ...what } = finding;
    const offers = serving(finding, subject, look, tried);
    const help =
      offers.length > 0 ? offers.map(({ text }) => text).join(', or ') : (advice ?? inGeneral(problem));
    const fix = sure ? (offers[0]?.edits ?? null) : null;
    return report(problem, { ...what, help, ...(fix ? { fix } : {}) });
  });
}

/** The envelope with some statements, and what is then found. */
interface Tried {
  readonly after: Subject;
  readonly found: readonly Finding[];
}

/**
 * Remedies after which nothing new is found; where there are none, those after which no new error is; where another
 * mistake lay behind this one, those after which no error is but what lay there.
 */
function serving(
  finding: Finding,
  subject: Subject,
  look: Look,
  tried: Map<string, Tried>,
): readonly Offer[] {
  if (finding.remedies.length === 0) return [];
  const said = new Set(look(subject, 'said').map(identity));
  const all = new Set(look(subject, 'all').map(identity));
  const tryOut = trier(subject, look, tried);
  for (const { matters, before } of [
    { matters: isMoreThanNote, before: said },
    { matters: isError, before: said },
    { matters: isError, before: all },
  ]) {
    const hinders = (found: Finding): boolean =>
      identity(found) === identity(finding) || (matters(found) && !before.has(identity(found)));
    const attempt = (statements: Statements): Subject | null => {
      const { after, found } = tryOut(statements) ?? {};
      return after && found && !found.some(hinders) ? after : null;
    };
    const offers = firstFew(finding, { subject, attempt });
    if (offers.length > 0) return offers;
  }
  return [];
}

/** Folds an envelope anew with other statements, each only once; null when enough has been tried. */
function trier(subject: Subject, look: Look, tried: Map<string, Tried>) {
  let left = MOST_TRIALS;
  return (statements: Statements): Tried | null => {
    const key = JSON.stringify(statements);
    const known = tried.get(key);
    if (known || left === 0) return known ?? null;
    left--;
    const after = folded(restate(subject.envelope, statements));
    const result = { after, found: look(after, 'said') };
    tried.set(key, result);
    return result;
  };
}

function firstFew({ remedies }: Finding, trial: Trial): readonly Offer[] {
  const offers: Offer[] = [];
  for (const remedy of remedies) {
    const offer = remedy(trial);
    if (offer && !offers.some(({ text }) => text === offer.text)) offers.push(offer);
    if (offers.length === OFFERS) break;
  }
  return offers;
}

/** How such a mistake is usually mended: where too much is wrong at once for any one edit to do it. */
const inGeneral = ({ remedy }: Problem): string =>
  `${remedy.charAt(0).toLowerCase()}${remedy.slice(1).replace(/\.$/, '')}`;

const identity = ({ problem, about }: Finding): string => `${problem.name} ${about}`;
const severity = (found: Finding) => found.severity ?? found.problem.severity;
const isMoreThanNote = (found: Finding): boolean => severity(found) !== 'note';
const isError = (found: Finding): boolean => severity(found) === 'error';
