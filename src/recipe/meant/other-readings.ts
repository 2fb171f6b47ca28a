import { UNITS } from '../../measure/unit.js';
import { PAPER_GRADES } from '../../stock/paper-grades.js';
import { type Span, spanText } from '../../text/span.js';
import { gsmOf } from '../sums/paper-weights.js';

/** A number as written, with another unit, and what it then comes to (g/m² or mm). */
export interface Reading {
  readonly text: string;
  readonly value: number;
}

/** What the number written at `at` would weigh in gsm and in pounds of each grade; nothing of a name or a sum. */
export const otherWeights = (at: Span): readonly Reading[] => readings(at, WEIGHTS);

/** How thick it would be in each unit that calipers are given in. */
export const otherCalipers = (at: Span): readonly Reading[] => readings(at, CALIPERS);

/** The reading nearest to what is usual, of those that are possible. */
export const likeliest = (
  found: readonly Reading[],
  usual: number,
  possible: (value: number) => boolean,
): Reading | undefined =>
  found
    .filter(({ value }) => possible(value))
    .sort((a, b) => distance(a.value, usual) - distance(b.value, usual))[0];

const distance = (one: number, other: number): number => Math.abs(Math.log(one / other));

type UnitOf = readonly [unit: string, factor: number];

const WEIGHTS: readonly UnitOf[] = [
  ['gsm', 1],
  ...PAPER_GRADES.map((grade): UnitOf => [`lb ${grade.name}`, gsmOf(1, grade)]),
];

const CALIPERS: readonly UnitOf[] = ['mil', 'mm', 'um'].map((unit) => [unit, UNITS.get(unit)?.factor ?? 0]);

/** One number in digits, and its unit. */
const MEASURE = /^(\d+(?:\.\d+)?|\.\d+)\s*(.*)$/;

function readings(at: Span, units: readonly UnitOf[]): readonly Reading[] {
  const [, count = '', own = ''] = MEASURE.exec(spanText(at)) ?? [];
  if (count === '' || !/^[a-z" ]*$/.test(own)) return [];
  return units
    .filter(([unit]) => unit !== own)
    .map(([unit, factor]) => ({ text: `${count} ${unit}`, value: Number(count) * factor }));
}
