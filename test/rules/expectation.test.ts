/* An expectation that does not hold, in every way of saying one: what it came to, and what would hold of it as made. */
import { expect, test } from 'vitest';
import { compileText } from '../support/compile-text.js';

/** A card on a blank of 207 mm; six blanks are cut from its sheet. */
const recipe = (expectation: string): string => `units mm

paper chart {
  sheet: 640 x 450
  weight: 120 gsm
  caliper: 150 um
}

envelope tide-card {
  card: A6
  blank: 207
  paper: chart
  expect ${expectation}
}
`;

/** The findings of what is expected. Of their help, what is offered last is told: two ways that mend it may come before. */
const found = (expectation: string) => {
  const { recipes, diagnostics } = compileText(recipe(expectation));
  expect(recipes).toHaveLength(1);
  return diagnostics.filter(({ problem }) => problem.name === 'expectation');
};

type Row = readonly [expectation: string, is: string, should: string, why: string, asMade: string | null];

test.each<Row>([
  ['blank < 207', '207 mm', 'less than 207 mm', 'off by 0 mm', '<= 207 mm'],
  ['blank < 206', '207 mm', 'less than 206 mm', 'off by 1 mm', '<= 207 mm'],
  ['blank <= 206.5', '207 mm', 'at most 206.5 mm', 'off by 0.5 mm', '<= 207 mm'],
  ['blank > 207', '207 mm', 'more than 207 mm', 'off by 0 mm', '>= 207 mm'],
  ['blank >= 207.5', '207 mm', 'at least 207.5 mm', 'off by 0.5 mm', null],
  ['blank = 206', '207 mm', '206 mm', "off by 1 mm; `=` allows 0.25 mm, half the ruler's step", '= 207 mm'],
  ['blank = 206 +- 0.5', '207 mm', '206 mm', 'off by 1 mm; `=` allows 0.5 mm', '= 207 mm'],
  ['blank = 206 +- 0', '207 mm', '206 mm', 'off by 1 mm', '= 207 mm'],
  // Neither on the ruler: the bound is moved to the next mark that holds.
  ['closure > 90', '72.1 mm', 'more than 90 mm', 'off by 17.9 mm', '>= 72 mm'],
  ['closure < 70', '72.1 mm', 'less than 70 mm', 'off by 2.1 mm', '<= 72.5 mm'],
  ['per-sheet = 5', '6', '5', 'off by 1', '= 6'],
  ['per-sheet < 6', '6', 'less than 6', 'off by 0', '<= 6'],
  ['per-sheet <= 5', '6', 'at most 5', 'off by 1', '<= 6'],
  ['per-sheet > 6', '6', 'more than 6', 'off by 0', '>= 6'],
  ['per-sheet >= 7', '6', 'at least 7', 'off by 1', '>= 6'],
  ['mass = 5 g +- 0.05 g', '5.11 g', '5 g', 'off by 0.11 g; `=` allows 0.05 g', '= 5.1 g +- 0.1 g'],
  ['mass < 5 g', '5.11 g', 'less than 5 g', 'off by 0.11 g', '<= 5.2 g'],
  ['mass > 5.5 g', '5.11 g', 'more than 5.5 g', 'off by 0.39 g', '>= 5.1 g'],
])('expect %s', (expectation, is, should, why, asMade) => {
  const [finding, ...others] = found(expectation);
  expect(others).toEqual([]);
  const name = expectation.replace(/ .*/, '');
  expect(finding?.message).toBe(`the \`${name}\` of tide-card comes to ${is}, where ${should} is expected`);
  expect(finding?.why).toBe(why);
  const offered = /write `expect (\S+ [^`]*)` if that is right/.exec(finding?.help ?? '')?.[1] ?? null;
  expect(offered).toBe(asMade && `${name} ${asMade}`);
  if (offered) expect(found(offered)).toEqual([]);
});

test.each([
  'blank = 207',
  'blank <= 207',
  'blank >= 207',
  'blank < 207.01',
  'blank > 206.99',
  // Half a step of the ruler either way, or as much as is stated.
  'blank = 207.25',
  'blank = 206 +- 1',
  'per-sheet = 6',
  'per-sheet <= 6',
  'per-sheet >= 6',
  'per-sheet < 7',
  'per-sheet > 5',
])('holds: expect %s', (expectation) => {
  expect(found(expectation)).toEqual([]);
});
