import { expect, test } from 'vitest';
import { gsmPerPound, PAPER_GRADES } from '../../src/stock/paper-grades.js';
import { SOURCES } from '../../src/stock/sources.js';
import { referenceTable } from '../support/reference-table.js';

const factor = (name: string): number => {
  const grade = PAPER_GRADES.find((each) => each.name === name);
  return grade ? gsmPerPound(grade) : Number.NaN;
};

/** Published basic sizes, with the factor worked out from the exact pound and inch (test/reference/paper.tsv). */
const published = referenceTable('paper.tsv').filter(
  ({ record, sheets }) => record === 'basic_size' && sheets === '500',
);

test.each(['text', 'cover', 'bond', 'index', 'bristol', 'tag'])('pounds of %s', (name) => {
  const row = published.find(({ grade }) => grade?.split(/[ ,]+/).includes(name));
  expect(factor(name)).toBeCloseTo(Number(row?.gsm_per_lb), 6);
});

test('worked examples of a paper maker and a copier handbook, exact to the printed rounding', () => {
  // Printed with the factor 1406.5: 28 lb bond 105.3 g/m²; exact 105.27.
  expect(28 * factor('bond')).toBeCloseTo(105.27, 2);
  // Printed 90 lb offset × 1.4802 = 133.218; exact 133.213. Printed 100 lb cover 270.42; exact 270.411.
  expect(90 * factor('text')).toBeCloseTo(133.213, 3);
  expect(100 * factor('cover')).toBeCloseTo(270.411, 3);
});

test('every grade names sources that are known', () => {
  for (const { sources } of PAPER_GRADES)
    for (const id of sources.split(';')) expect(SOURCES.has(id), id).toBe(true);
});
