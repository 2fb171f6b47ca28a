import { describe, expect, test } from 'vitest';
import { folded } from '../../src/rules/folded.js';
import { RULES } from '../../src/rules/index.js';
import type { Subject } from '../../src/rules/rule.js';
import { envelope } from '../support/envelopes.js';

/** A sound envelope of which one margin is said to be otherwise, as made and in the worst case. */
function subject(margin: keyof Subject['facts']['worst'], made: number, worst: number): Subject {
  const sound = folded(envelope({ tape: 6 }));
  const { facts } = sound;
  const changed =
    margin === 'flapStop' ? { flapStop: made } : { margins: { ...facts.margins, [margin]: made } };
  return { ...sound, facts: { ...facts, ...changed, worst: { ...facts.worst, [margin]: worst } } };
}

/** The problems found, rule by rule, as if no rule were kept quiet by another. */
function problems(wrong: Subject): readonly string[] {
  const found = new Set<string>();
  return RULES.flatMap((rule) => {
    const findings = rule.check(wrong, found);
    if (findings.length > 0) found.add(rule.problem.name);
    return findings.map(({ problem, about }) => (problem.name === 'tight' ? `tight ${about}` : problem.name));
  });
}

test('an envelope with room to spare has no findings', () => {
  expect(problems(folded(envelope({})))).toEqual([]);
});

// Tape of 6 mm needs 8: about 1 mm on either side (common practice, no source).
describe.each([
  { margin: 'crossing', rule: 'creases-cross', limit: 0 },
  { margin: 'seamOverlap', rule: 'seam-holds', limit: 8 },
  { margin: 'closure', rule: 'flap-closes', limit: 8 },
  { margin: 'roomWidth', rule: 'card-fits', limit: 0 },
  { margin: 'roomHeight', rule: 'card-fits', limit: 0 },
  { margin: 'roomDepth', rule: 'card-fits', limit: 0 },
  { margin: 'flapStop', rule: 'flap-on-face', limit: 0 },
] as const)('$margin', ({ margin, rule, limit }) => {
  test('at its limit in the worst case it is enough', () => {
    expect(problems(subject(margin, limit + 1, limit))).toEqual([]);
  });
  test('at its limit as made, lost in the worst case, it is tight and no more', () => {
    expect(problems(subject(margin, limit, limit - 1))).toEqual([`tight ${rule}`]);
  });
  test('noise below a millionth does not count', () => {
    expect(problems(subject(margin, limit - 1e-7, limit - 1e-7))).toEqual([]);
  });
  test('below its limit as made it is the rule’s own finding, and not tight as well', () => {
    // A flap-on-face finding names the flap, which these numbers alone do not have.
    const expected = rule === 'flap-on-face' ? [] : [rule];
    expect(problems(subject(margin, limit - 0.01, limit - 2))).toEqual(expected);
  });
});

test('a seam too narrow and a crossing too tight are one mistake', () => {
  const narrow = folded(envelope({ blank: { width: 193, height: 193 } }));
  expect(problems(narrow).filter((name) => name !== 'seam-holds')).toEqual([]);
});
