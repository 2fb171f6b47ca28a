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
  if (before.expects.length === 0 && after.expects.length === 0) return [];
  return [...EXPECT_NAMES.keys()].flatMap((name) => {
    const [older, newer] = [expectsOf(before, name), expectsOf(after, name)];
    const gone = without(older, newer);
    const come = without(newer, older);
    return Array.from({ length: Math.max(gone.length, come.length) }, (_, index) =>
      writtenChange(
        `expect ${name}`,
        { statement: gone[index] ?? null, units: before.units },
        { statement: come[index] ?? null, units: after.units },
        (value, units) => readingOf(name, value as Expected, units),
        textOf,
      ),
    );
  });
}

/** The part of an `expect` that says what its figure must be. */
type Expected = Pick<Expectation, 'compare' | 'value' | 'tolerance'>;

const expectsOf = ({ expects }: Envelope, name: string): readonly Statement[] =>
  expects
    .filter((expectation) => expectation.name === name)
    .map(({ compare, value, tolerance, from, span }) => ({
      place: from === null ? { kind: 'here' } : { kind: 'style', name: from },
      value: { compare, value, tolerance } satisfies Expected,
      span,
    }));

/** Those whose like is not among `others`. */
const without = (expects: readonly Statement[], others: readonly Statement[]): readonly Statement[] =>
  expects.filter(({ value }) => !others.some((other) => sameValue(value, other.value)));

/** As spelled, but for the words in front: `>= 7 mm`. */
const textOf = ({ span }: Statement): string => spanText(span).replace(/^expect\s+[\w-]+\s*/, '');

function readingOf(name: string, { compare, value, tolerance }: Expected, units: Units): string | null {
  const read = EXPECTED_READINGS[EXPECT_NAMES.get(name) ?? 'number'];
  const slack = tolerance === null ? '' : ` +- ${read(tolerance, units)}`;
  return `${compare} ${read(value, units)}${slack}`;
}
