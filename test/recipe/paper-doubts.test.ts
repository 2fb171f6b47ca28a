/*
 * No paper that is on a published list is doubted: every weight with its caliper of test/reference/paper.tsv (its sources
 * stand in each row), in the units that are printed. Where a list prints a range, its ends are taken each with each.
 */
import { describe, expect, test } from 'vitest';
import { PAPER_GRADES } from '../../src/stock/paper-grades.js';
import { compileText } from '../support/compile-text.js';
import { referenceTable } from '../support/reference-table.js';

const printed = referenceTable('paper.tsv').filter(({ record }) => record === 'caliper_example');

const doubts = (...lines: readonly string[]): readonly string[] =>
  compileText(`units mm\npaper listed {\n${lines.join('\n')}\n}\n`).diagnostics.map(({ message }) => message);

/** The grades whose pounds a recipe may state; wrapping kraft, in reams of 480 sheets, is listed by its grams. */
const GRADES = PAPER_GRADES.map(({ name }) => name);

/** `150-160` is both of its ends. */
const ends = (range = ''): readonly string[] => range.split('-');

test('both lists of pounds and the list of craft cards are there', () => {
  expect(printed.length).toBeGreaterThanOrEqual(29);
  expect(printed.filter(({ basis_lb }) => basis_lb).length).toBeGreaterThan(15);
});

describe.each(printed)('$grade $basis_lb: $gsm gsm, $caliper_mm mm', (row) => {
  const calipers = [
    ...ends(row.caliper_mm).map((count) => `caliper: ${count} mm`),
    ...ends(row.caliper_in).map((count) => `caliper: ${count} in`),
  ];

  test.each(calipers)('%s', (caliper) => {
    expect(doubts(caliper)).toEqual([]);
    for (const gsm of ends(row.gsm)) expect(doubts(`weight: ${gsm} gsm`, caliper)).toEqual([]);
    const grade = row.grade?.split(' ')[0];
    if (row.basis_lb && grade && GRADES.includes(grade))
      expect(doubts(`weight: ${row.basis_lb} lb ${grade}`, caliper)).toEqual([]);
  });
});

/** Each figure of the lists with a unit that it was not printed in. */
const wrongly = printed.flatMap(({ gsm, caliper_mm, caliper_in }) => [
  [`weight: ${ends(gsm)[0]} gsm`, `caliper: ${ends(caliper_mm)[0]} mil`],
  [`weight: ${ends(gsm)[0]} gsm`, `caliper: ${ends(caliper_in)[0]} mm`],
]);

test.each(wrongly)('a caliper in another unit is doubted: %s, %s', (weight, caliper) => {
  expect(doubts(weight, caliper)).toHaveLength(1);
});
