import { expect, test } from 'vitest';
import { askedOnly } from '../../grammar/words.js';
import { EXPECT_NAMES } from '../../src/recipe/expect-names.js';
import { isProperty } from '../../src/recipe/properties.js';

test('the grammar knows by heart which names are only asked for: those of an `expect` that are no properties', () => {
  expect([...askedOnly]).toEqual([...EXPECT_NAMES.keys()].filter((name) => !isProperty(name)));
});
