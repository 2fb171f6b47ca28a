/* An envelope that comes out otherwise though nobody said that it should: what is found, and what is not. */
import { describe, expect, test } from 'vitest';
import { figuresChanged } from '../../src/diff/figures-changed.js';
import { mainFigures } from '../../src/diff/main-figures.js';
import { compareTexts, onlyChange, side } from '../support/compare.js';

const tides = (...lines: readonly string[]): string =>
  [
    'units in',
    'envelope tides {',
    '  card: 8 1/2 x 5 1/2',
    ...lines.map((line) => `  ${line}`),
    '}',
    '',
  ].join('\n');

const found = (before: string, after: string) => figuresChanged(compareTexts(before, after), 'in spring');

test('a wider seam that nobody expects: which statement, and the first of the figures that follow', () => {
  const [finding, ...others] = found(tides('tags: flat'), tides('seam: 9/16', 'title: "Tides"'));
  expect(others).toEqual([]);
  expect(finding).toMatchObject({
    message: 'tides comes out otherwise than in spring, though no `expect` of it was touched',
    help: 'state in an `expect` what is meant to hold, or put back what changed it',
  });
  expect(finding?.primary.span.start).toBe(tides().indexOf('tides'));
  // Neither the title, which moves no figure, nor the tags, which are gone and stand nowhere.
  expect(finding?.related.map(({ text }) => text)).toEqual(['seam is not what it was']);
  // Blank 10.253 + 2 · 9/16 = 11.378, on the ruler 11 3/8: an eighth more than with seams of 1/2, and every mark by as much.
  expect(finding?.why).toBe(
    'blank 11 1/4 in → 11 3/8 in; side mark 5 1/16 in → 5 3/16 in; seal mark 7 3/16 in → 7 5/16 in; bottom mark 7 3/16 in → 7 5/16 in; 7 more',
  );
});

test('one figure that follows is told alone; of many statements, four', () => {
  const weighed = (card: string): string =>
    `units in\npaper laid {\n  weight: 100 gsm\n  caliper: 5 mil\n}\n${tides('paper: laid', `contents: ${card}`).slice(9)}`;
  const [finding] = found(weighed('5 g'), weighed('10 g'));
  expect(finding?.why).toMatch(/^mass \S+ oz → \S+ oz$/);
  const many = ['seam: 9/16', 'ease: 3/8', 'step: 1/32', 'tape: 1/2', 'bulk: 1/8'];
  expect(found(tides(), tides(...many))[0]?.related).toHaveLength(4);
});

describe('nothing is found', () => {
  test.each([
    ['an `expect` was touched', tides(), tides('seam: 9/16', 'expect blank = 11 3/8')],
    ['only words changed', tides(), tides('title: "Tides"')],
    ['the envelope is new', 'units in\n', tides()],
    ['the envelope is gone', tides(), 'units in\n'],
    // A thousandth of a point is nothing that anybody reads, or cuts.
    ['all figures read alike', tides('seam: 1/2'), tides('seam: 1/2 + 1/100000')],
  ])('%s', (_, before, after) => {
    expect(found(before, after)).toEqual([]);
  });
});

test('the figures that an envelope is known by, in their order; a box has its second scores as well', () => {
  const names = (text: string) => side({ 't.plica': text }).recipes.flatMap(mainFigures);
  expect(names(tides()).map(({ name }) => name)).toEqual([
    'blank',
    'side-mark',
    'seal-mark',
    'bottom-mark',
    'face-width',
    'face-height',
  ]);
  const box = names(tides('depth: 1/4'));
  expect(box.map(({ name }) => name)).toEqual([
    'blank',
    'side-mark',
    'seal-mark',
    'bottom-mark',
    'second-side-mark',
    'second-seal-mark',
    'second-bottom-mark',
    'face-width',
    'face-height',
  ]);
  expect(box[0]).toMatchObject({ dimension: 'length', before: [null] });
  // Marks of both sides where they differ, one where they are alike.
  const marks = names(tides('blank: 11 1/4', 'side-mark: 5, 5 1/8')).map(({ after }) => after.length);
  expect(marks).toEqual([1, 2, 1, 1, 1, 1]);
});

test('what has come out otherwise is one figure for what is alike on both sides, and two for what is not', () => {
  const { figures } = onlyChange(
    compareTexts(tides('blank: 11 1/4', 'side-mark: 5, 5 1/8'), tides('blank: 11 1/4', 'side-mark: 5, 5')),
  );
  const values = (wanted: string) => figures.find(({ name }) => name === wanted);
  expect(values('side-mark')).toMatchObject({ before: [127, expect.closeTo(130.175, 6)], after: [127, 127] });
  // Only one of the two changed.
  expect(values('side-flap')?.before).toHaveLength(2);
  expect(values('blank')).toBeUndefined();
});
