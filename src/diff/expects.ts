import { EXPECT_NAMES } from '../recipe/expect-names.js';
import type { Envelope, Expectation } from '../recipe/recipe.js';
import type { Units } from '../measure/unit.js';
import { spanText } from '../text/span.js';
import type { WrittenChange } from './difference.js';
import { EXPECTED_READINGS } from './reading.js';
import { sameValue } from './same-value.js';
import type { Statement } from './statements.js';
import { writtenChange } from './written-change.js';

/** What is expected on one side only. Of two that expect something else of one figure, the later is the earlier changed. */
export function expectsThatDiffer(before: Envelope, after: Envelope): readonly WrittenChange[] {
  const [older, newer] = [statementsOf(before), statementsOf(after)];
  const [gone, come] = [without(older, newer), without(newer, older)];
  if (gone.length === 0 && come.length === 0) return [];
  return [...EXPECT_NAMES.keys()].flatMap((name) => {
    const [was, is] = [of(name, gone), of(name, come)];
    return Array.from({ length: Math.max(was.length, is.length) }, (_, index) =>
      writtenChange(
        `expect ${name}`,
        { statement: was[index] ?? null, units: before.units },
        { statement: is[index] ?? null, units: after.units },
        (value, units) => readingOf(value as Expected['value'], units),
        textOf,
      ),
    );
  });
}

/** An `expect` as a statement. */
interface Expected extends Statement {
  readonly value: Pick<Expectation, 'name' | 'compare' | 'value' | 'tolerance'>;
}

const statementsOf = ({ expects }: Envelope): readonly Expected[] =>
  expects.map(({ name, compare, value, tolerance, from, span }) => ({
    place: from === null ? { kind: 'here' } : { kind: 'style', name: from },
    value: { name, compare, value, tolerance },
    span,
  }));

const of = (name: string, expects: readonly Expected[]): readonly Expected[] =>
  expects.filter(({ value }) => value.name === name);

/** Those whose like is not among `others`. */
const without = (expects: readonly Expected[], others: readonly Expected[]): readonly Expected[] =>
  expects.filter(({ value }) => !others.some((other) => sameValue(value, other.value)));

/** As spelled, but for the words in front: `>= 7 mm`. */
const textOf = ({ span }: Statement): string => spanText(span).replace(/^expect\s+[\w-]+\s*/, '');

function readingOf({ name, compare, value, tolerance }: Expected['value'], units: Units): string | null {
  const read = EXPECTED_READINGS[EXPECT_NAMES.get(name) ?? 'number'];
  const slack = tolerance === null ? '' : ` +- ${read(tolerance, units)}`;
  return `${compare} ${read(value, units)}${slack}`;
}

/** Classes of post that only one side expects to take it. */
export function postExpectsThatDiffer(before: Envelope, after: Envelope): readonly WrittenChange[] {
  const [older, newer] = [postStatementsOf(before), postStatementsOf(after)];
  const side = (statement: Statement | null, { units }: Envelope) => ({ statement, units });
  const change = (was: Statement | null, is: Statement | null) =>
    writtenChange('expect post', side(was, before), side(is, after), () => null, postTextOf);
  return [
    ...[...older].flatMap(([name, was]) => (newer.has(name) ? [] : [change(was, null)])),
    ...[...newer].flatMap(([name, is]) => (older.has(name) ? [] : [change(null, is)])),
  ];
}

const postStatementsOf = ({ expectsPost }: Envelope): ReadonlyMap<string, Statement> =>
  new Map(
    expectsPost.map(({ post, from, span }) => [
      post,
      { place: from === null ? { kind: 'here' } : { kind: 'style', name: from }, value: post, span },
    ]),
  );

const postTextOf = ({ span }: Statement): string => spanText(span).replace(/^expect\s+post\s+/, '');
