/* What each rule would try to mend a mistake, in its order, and which statements it blames: the likeliest first. */
import { expect, test } from 'vitest';
import type { Stated } from '../../src/recipe/origin.js';
import type { Envelope } from '../../src/recipe/recipe.js';
import { EXPECT_ADVICE } from '../../src/rules/expect-advice.js';
import { folded } from '../../src/rules/folded.js';
import { RULES } from '../../src/rules/index.js';
import { MARGINS } from '../../src/rules/margins.js';
import type { Remedy } from '../../src/rules/remedy.js';
import type { Finding, Subject } from '../../src/rules/rule.js';
import { envelope, paper, stated, type Wishes } from '../support/envelopes.js';

/** The statements that a remedy tries first, as if they served: a value, or `out` for a property that is left out. */
function firstTry(remedy: Remedy, subject: Subject): string {
  let said = 'nothing';
  remedy({
    subject,
    attempt: (statements) => {
      said = Object.entries(statements)
        .map(
          ([name, value]) => `${name} ${value === null ? 'out' : JSON.stringify(value).replaceAll('"', '')}`,
        )
        .join(', ');
      return subject;
    },
  });
  return said;
}

/** Each property stated, so that each can be left out; every tip has a shape of its own. */
const STATED: Wishes = {
  blank: { width: 210, height: 210 },
  sideMarks: [101, 101],
  sealMark: 102,
  bottomMark: 103,
  depth: 4,
  shift: 2,
  liner: 3,
  flap: { kind: 'blunt', cut: 20, radius: 4 },
  bottom: { kind: 'blunt', cut: 21, radius: 5 },
  sides: { kind: 'rounded', radius: 30 },
};

/** The same envelope with everything copied from a style, so that a finding shows each statement that it blames. */
const inherited = (wishes: Wishes): Subject => {
  const own = envelope(wishes);
  const entries = Object.entries(own).map(([name, field]: [string, unknown]) =>
    isStated(field)
      ? [name, { ...field, origin: { ...field.origin, kind: 'inherited', from: 'house' } }]
      : [name, field],
  );
  return folded(Object.fromEntries(entries) as Envelope);
};

const isStated = (field: unknown): field is Stated<unknown> =>
  typeof field === 'object' && field !== null && 'origin' in field;

const blamed = ({ related = [] }: Finding): readonly string[] =>
  related.flatMap(({ text }) => /^`(.*)` comes from house$/.exec(text)?.[1] ?? []);

const lines = (title: string, blame: readonly string[], tries: readonly string[]): string =>
  [
    title,
    ...(blame.length > 0 ? [`  blames ${blame.join(', ')}`] : []),
    ...tries.map((each) => `  tries ${each}`),
    '',
  ].join('\n');

test('for each margin that is short', async () => {
  const subject = folded(envelope(STATED));
  const told = MARGINS.flatMap(({ margins }) => margins).map((margin) =>
    lines(
      margin.name,
      margin.blame(subject),
      margin.remedies(subject).map((remedy) => firstTry(remedy, subject)),
    ),
  );
  await expect(told.join('\n')).toMatchFileSnapshot('tried-for-margins.txt');
});

const SHEET = paper({ sheet: stated({ width: 200, height: 150 }) });

/** Envelopes with one mistake each, or a few. */
const MISTAKES: Readonly<Record<string, Wishes>> = {
  'an oblong blank': { blank: { width: 215, height: 210 } },
  'a box with folded corners': { depth: 4, corners: { bottom: 'folded', seal: 'notched' } },
  'side marks that differ': { sideMarks: [101, 103] },
  'end marks that differ': { sealMark: 104 },
  'tips cut and rounded too much': {
    flap: { kind: 'blunt', cut: 200, radius: 0 },
    bottom: { kind: 'rounded', radius: 400 },
    sides: { kind: 'blunt', cut: 70, radius: 4 },
  },
  'side flaps cut so short that the back is bare': { sides: { kind: 'blunt', cut: 40, radius: 0 } },
  'a small blank': { blank: { width: 180, height: 180 } },
  'a thick card': { bulk: 9 },
  'a box too shallow': { bulk: 9, depth: 4, corners: { bottom: 'notched', seal: 'notched' } },
  'an inset that leaves no lining': { liner: 80 },
  'a sheet too small': { paper: SHEET, liner: 1 },
  'a sheet too small for the lining': { linerPaper: SHEET, liner: 1 },
  'a stiff paper': { paper: { ...SHEET, sheet: null }, caliper: 2 },
  'a long flap on a long face': {
    face: { width: 300, height: 80 },
    bottom: { kind: 'blunt', cut: 1, radius: 0 },
    flap: { kind: 'blunt', cut: 2, radius: 0 },
  },
};

test('for each mistake that is none of a margin', async () => {
  const told = Object.entries(MISTAKES).map(([mistake, wishes]) => {
    const subject = inherited(wishes);
    const found = RULES.filter(({ problem }) => problem.name !== 'tight').flatMap(({ check }) =>
      check(subject, new Set()),
    );
    return [
      `## ${mistake}\n`,
      ...found.map((finding) =>
        lines(
          `${finding.problem.name}, ${finding.about}: ${finding.message}`,
          blamed(finding),
          finding.remedies.map((remedy) => firstTry(remedy, subject)),
        ),
      ),
    ].join('\n');
  });
  await expect(told.join('\n')).toMatchFileSnapshot('tried-for-mistakes.txt');
});

test('for each figure that is expected otherwise', async () => {
  const subject = folded(envelope(STATED));
  const told = [...EXPECT_ADVICE].map(([name, { remedies, saidBy }]) =>
    lines(
      `${name}${saidBy.length > 0 ? `, after ${saidBy.join(' or ')} nothing` : ''}`,
      [],
      remedies(50, subject.envelope).map((remedy) => firstTry(remedy, subject)),
    ),
  );
  await expect(told.join('\n')).toMatchFileSnapshot('tried-for-figures.txt');
});
