import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { report } from '../diagnostics/problem.js';
import { restate, type Statements } from '../recipe/restate.js';
import { folded } from './folded.js';
import type { Offer } from './offer.js';
import type { Trial } from './remedy.js';
import type { Finding, Subject } from './rule.js';

/** What the rules find in an envelope: what is said of it, each mistake once, or all that there is. */
export type Look = (subject: Subject, which: 'said' | 'all') => readonly Finding[];

/** How many remedies a finding offers. */
const OFFERS = 2;

/** The finding with its help: the first of its remedies that serve when they are tried on the envelope. */
export function mend(finding: Finding, subject: Subject, look: Look): Diagnostic {
  const { problem, remedies: _remedies, advice, about: _about, sure, ...what } = finding;
  const offers = serving(finding, subject, look);
  const help = offers.length > 0 ? offers.map(({ text }) => text).join(', or ') : advice;
  const fix = sure ? (offers[0]?.edits ?? null) : null;
  return report(problem, { ...what, ...(help ? { help } : {}), ...(fix ? { fix } : {}) });
}

/**
 * Remedies after which nothing new is found; where there are none, those after which no new error is; where another
 * mistake lay behind this one, those after which no error is but what lay there.
 */
function serving(finding: Finding, subject: Subject, look: Look): readonly Offer[] {
  if (finding.remedies.length === 0) return [];
  const said = new Set(look(subject, 'said').map(identity));
  const all = new Set(look(subject, 'all').map(identity));
  const stays = (found: Finding): boolean => identity(found) === identity(finding);
  for (const { matters, before } of [
    { matters: isMoreThanNote, before: said },
    { matters: isError, before: said },
    { matters: isError, before: all },
  ]) {
    const attempt = (statements: Statements): Subject | null => {
      const after = folded(restate(subject.envelope, statements));
      const hinders = look(after, 'said').some(
        (found) => stays(found) || (matters(found) && !before.has(identity(found))),
      );
      return hinders ? null : after;
    };
    const offers = firstFew(finding, { subject, attempt });
    if (offers.length > 0) return offers;
  }
  return [];
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

const identity = ({ problem, about }: Finding): string => `${problem.name} ${about}`;
const severity = (found: Finding) => found.severity ?? found.problem.severity;
const isMoreThanNote = (found: Finding): boolean => severity(found) !== 'note';
const isError = (found: Finding): boolean => severity(found) === 'error';
