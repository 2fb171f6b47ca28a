import type { Problem } from '../diagnostics/problem.js';
import { FIGURES } from '../folding/figures.js';
import { ceilToStep } from '../measure/ruler.js';
import { printShort } from '../measure/number.js';
import { NEARLY } from '../measure/slack.js';
import { EXPECT_NAMES, type ExpectDimension } from '../recipe/expect-names.js';
import type { Envelope, Expectation } from '../recipe/recipe.js';
import { type Advice, EXPECT_ADVICE, NO_ADVICE } from './expect-advice.js';
import type { Remedy } from './remedy.js';
import type { Finding, Rule, Subject } from './rule.js';
import { exact, read, readApart, readArea, writeLength } from './words.js';

const problem: Problem = {
  name: 'expectation',
  severity: 'error',
  meaning: 'A number does not come out as an `expect` says it must.',
  matters: 'Somebody relies on that number: a die, a stack of blanks cut already, a class of post.',
  remedy: 'Change the recipe so that it does, or the `expect` if it is the one that is wrong.',
  example: {
    wrong: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  seam: 9/16
  expect blank = 11 1/4
}
`,
    mended: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  seam: 1/2
  expect blank = 11 1/4
}
`,
  },
};

export const expectation: Rule = { problem, quietAfter: [], check };

/** Each expectation that does not hold, or that cannot be judged. */
function check(subject: Subject, found: ReadonlySet<string>): readonly Finding[] {
  return subject.envelope.expects.flatMap((expected): readonly Finding[] => {
    const advice = EXPECT_ADVICE.get(expected.name) ?? NO_ADVICE;
    if (advice.saidBy.some((name) => found.has(name))) return [];
    const values = FIGURES.get(expected.name)?.read(subject.facts) ?? [];
    if (values.includes(null)) return [unknown(subject, expected, advice.missing?.(subject))];
    const wrong = values.find((value) => value !== null && !holds(subject.envelope, expected, value));
    return wrong === undefined || wrong === null
      ? []
      : [broken(subject, expected, wrong, advice.remedies(expected.value, subject.envelope))];
  });
}

type Compare = Expectation['compare'];
type Missing = ReturnType<NonNullable<Advice['missing']>>;

const COMPARE: Readonly<Record<Compare, (made: number, expected: number, slack: number) => boolean>> = {
  '=': (made, expected, slack) => Math.abs(made - expected) <= slack + NEARLY,
  '<': (made, expected) => made < expected - NEARLY,
  '<=': (made, expected) => made <= expected + NEARLY,
  '>': (made, expected) => made > expected + NEARLY,
  '>=': (made, expected) => made >= expected - NEARLY,
};

const IN_WORDS: Readonly<Record<Compare, string>> = {
  '=': '',
  '<': 'less than ',
  '<=': 'at most ',
  '>': 'more than ',
  '>=': 'at least ',
};

/** How far an equal number may be off: as stated, or half a step of the ruler for a length, or not at all. */
const slack = ({ step }: Envelope, { name, tolerance }: Expectation): number =>
  tolerance ?? (EXPECT_NAMES.get(name) === 'length' ? step.value / 2 : 0);

const holds = (envelope: Envelope, expected: Expectation, made: number): boolean =>
  COMPARE[expected.compare](made, expected.value, slack(envelope, expected));

function unknown({ envelope }: Subject, expected: Expectation, missing: Missing | undefined): Finding {
  return {
    problem,
    about: aboutOf(expected),
    message: `the \`${expected.name}\` of ${envelope.name} is expected, but cannot be known`,
    ...placeOf(envelope, expected),
    remedies: [],
    ...missing,
  };
}

function broken(
  { envelope }: Subject,
  expected: Expectation,
  made: number,
  remedies: readonly Remedy[],
): Finding {
  const [is, should] = told(envelope, expected, made);
  const within = slack(envelope, expected);
  const [difference] = TELL[dimension(expected)](envelope, Math.abs(made - expected.value), 0);
  const allowed =
    expected.compare === '=' && within > 0
      ? `; \`=\` allows ${TELL[dimension(expected)](envelope, within, 0)[0]}${expected.tolerance === null ? ", half the ruler's step" : ''}`
      : '';
  return {
    problem,
    about: aboutOf(expected),
    message: `the \`${expected.name}\` of ${envelope.name} comes to ${is}, where ${IN_WORDS[expected.compare]}${should} is expected`,
    ...placeOf(envelope, expected),
    label: `comes to ${is}`,
    why: `off by ${difference}${allowed}`,
    remedies: expected.from === null ? [...remedies, asMade(expected, made)] : remedies,
  };
}

const dimension = ({ name }: Expectation): ExpectDimension => EXPECT_NAMES.get(name) ?? 'number';

/** Two values of a dimension in words, so that they can be told apart. */
const TELL: Readonly<
  Record<ExpectDimension, (envelope: Envelope, one: number, other: number) => readonly [string, string]>
> = {
  length: (envelope, one, other) => [exact(envelope, one), exact(envelope, other)],
  area: (envelope, one, other) => [readArea(envelope, one), readArea(envelope, other)],
  mass: (_, one, other) => [`${printShort(one, 2)} g`, `${printShort(other, 2)} g`],
  number: (_, one, other) => [printShort(one, 2), printShort(other, 2)],
};

const told = (envelope: Envelope, expected: Expectation, made: number): readonly [string, string] =>
  expected.name === 'blank' || expected.name.endsWith('mark')
    ? readApart(envelope, made, expected.value)
    : TELL[dimension(expected)](envelope, made, expected.value);

/** The same expectation with the number as made: for an author who finds that the number is right. */
const asMade =
  (expected: Expectation, made: number): Remedy =>
  ({ subject: { envelope } }) => {
    const value = AS_WRITTEN[dimension(expected)](envelope, made, expected.compare);
    if (value === null) return null;
    return { text: `write \`expect ${expected.name} ${value}\` if that is right`, edits: null };
  };

/** `= 11 3/8 in`, `>= 7 mm`: what holds of a number as made, or null where a recipe has no way to write it. */
const AS_WRITTEN: Readonly<
  Record<ExpectDimension, (envelope: Envelope, made: number, compare: Compare) => string | null>
> = {
  length: (envelope, made, compare) => {
    const step = envelope.step.value;
    if (compare === '=') return `= ${read(envelope, made)}`;
    const below = compare === '>' || compare === '>=';
    const bound = below ? -ceilToStep(-made, step) : ceilToStep(made, step);
    return `${below ? '>=' : '<='} ${writeLength(envelope, bound)}`;
  },
  area: () => null,
  mass: (_, made, compare) =>
    compare === '=' ? `= ${printShort(made, 1)} g +- 0.1 g` : bounded(compare, made, 10, ' g'),
  number: (_, made, compare) =>
    compare === '=' ? `= ${printShort(made, 0)}` : bounded(compare, made, 1, ''),
};

const bounded = (compare: Compare, made: number, parts: number, unit: string): string =>
  compare === '>' || compare === '>='
    ? `>= ${printShort(Math.floor(made * parts) / parts, 1)}${unit}`
    : `<= ${printShort(Math.ceil(made * parts) / parts, 1)}${unit}`;

const aboutOf = ({ name, span }: Expectation): string => `${name} ${span.source.name} ${span.start}`;

/** At the expected value, or at the envelope's name with the style that expects it beside. */
const placeOf = (envelope: Envelope, { from, span, valueSpan }: Expectation) =>
  from === null
    ? { at: valueSpan }
    : { at: envelope.span, related: [{ span, text: `style ${from} expects it` }] };
