import { expect, test } from 'vitest';
import { EXPECT_NAMES } from '../../src/recipe/expect-names.js';
import { EXPECT_READERS } from '../../src/rules/expect-readers.js';

test('every name that an expect may use is read off the facts, and no other', () => {
  expect([...EXPECT_READERS.keys()].sort()).toEqual([...EXPECT_NAMES.keys()].sort());
});
