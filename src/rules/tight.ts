import type { Problem } from '../diagnostics/problem.js';
import { isTight, type Margin } from './margin.js';
import { MARGINS } from './margins.js';
import { place } from './place.js';
import type { Finding, Rule, Subject } from './rule.js';
import { exact } from './words.js';

const problem: Problem = {
  name: 'tight',
  severity: 'warning',
  meaning: 'A margin that holds as made is lost when every cut and every mark is off by the tolerance.',
  matters: 'A careful hand will succeed; a hurried one may spoil a sheet.',
  remedy: 'Give the margin a little more, or cut more exactly and state a smaller tolerance.',
  example: {
    wrong: `units mm

envelope tide-card {
  card: A6
  ease: 3
}
`,
    mended: `units mm

envelope tide-card {
  card: A6
  ease: 4
}
`,
  },
};

export const tight: Rule = { problem, quietAfter: ['square-blank'], check };

/** For each rule that is content with what is made, the margin that loses most in the worst case of the hand. */
function check(subject: Subject, found: ReadonlySet<string>): readonly Finding[] {
  const reported = new Set(found);
  const findings: Finding[] = [];
  for (const { rule, margins, sharedWith } of MARGINS) {
    const explained = [rule.problem.name, ...rule.quietAfter, ...sharedWith].some((name) =>
      reported.has(name),
    );
    if (explained) continue;
    const [tightest] = margins
      .filter((margin) => isTight(margin, subject))
      .sort((a, b) => beyond(a, subject) - beyond(b, subject));
    if (!tightest) continue;
    reported.add(rule.problem.name);
    findings.push(finding(rule.problem.name, tightest, subject));
  }
  return findings;
}

/** What is left over the limit in the worst case. */
const beyond = (margin: Margin, subject: Subject): number =>
  (margin.worst(subject) ?? 0) - margin.limit(subject);

function finding(about: string, margin: Margin, subject: Subject): Finding {
  const { envelope } = subject;
  const made = exact(envelope, margin.made(subject) ?? 0);
  const worst = exact(envelope, margin.worst(subject) ?? 0);
  const off = exact(envelope, envelope.tolerance.value);
  return {
    problem,
    about,
    message: `in ${envelope.name}, ${margin.name} is enough as made, but not if every cut and mark is ${off} off`,
    ...place(envelope, margin.blame(subject)),
    label: `${made}, in the worst case ${worst}`,
    why: `${made} as made, ${worst} in the worst case; ${margin.because(subject)}`,
    remedies: margin.remedies(subject),
  };
}
