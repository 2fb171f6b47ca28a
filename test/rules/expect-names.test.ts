import { expect, test } from 'vitest';
import { FIGURES } from '../../src/folding/figures.js';
import { EXPECT_NAMES } from '../../src/recipe/expect-names.js';
import { EXPECT_ADVICE } from '../../src/rules/expect-advice.js';

test('every name that an expect may use is read off the facts, and no other', () => {
  expect([...FIGURES.keys()]).toEqual([...EXPECT_NAMES.keys()]);
});

test('advice is given for figures that there are', () => {
  expect([...EXPECT_ADVICE.keys()].filter((name) => !EXPECT_NAMES.has(name))).toEqual([]);
});
