import { expect, test } from 'vitest';
import { EXPECT_NAMES } from '../../src/recipe/expect-names.js';
import { ALTERNATIVES, PROPERTIES, propertiesOf, propertyNamed } from '../../src/recipe/properties.js';
import { writtenName } from '../../src/recipe/restate.js';
import { envelope } from '../support/envelopes.js';

test('every property says what it means and what holds without it, in words', () => {
  for (const [name, { leftOut, meaning, where, kind }] of Object.entries(PROPERTIES)) {
    for (const words of [leftOut, meaning, kind.wants]) expect(words, name).not.toBe('');
    expect(where.length, name).toBeGreaterThan(0);
  }
});

test('styles and envelopes have the same properties, papers their own and a title', () => {
  expect(propertiesOf('style')).toEqual(propertiesOf('envelope'));
  expect(propertiesOf('paper')).toEqual(['title', 'sheet', 'weight', 'caliper', 'grain', 'price', 'stock']);
  expect(propertiesOf('paper').filter((name) => propertiesOf('envelope').includes(name))).toEqual(['title']);
});

test('an envelope has a field for each of its properties, named like it', () => {
  const fields: readonly string[] = Object.keys(envelope({})).map(writtenName);
  expect(propertiesOf('envelope').filter((name) => !fields.includes(name))).toEqual([]);
});

test('what is stated is not expected, but for what rounding may change', () => {
  expect(propertiesOf('envelope').filter((name) => EXPECT_NAMES.has(name))).toEqual([
    'depth',
    'blank',
    'side-mark',
    'seal-mark',
    'bottom-mark',
  ]);
});

test('no object’s own names pass for properties', () => {
  for (const name of ['constructor', '__proto__', 'toString', 'hasOwnProperty']) {
    expect(propertyNamed(name)).toBeUndefined();
  }
  expect(ALTERNATIVES.flat(2).every((name) => propertyNamed(name))).toBe(true);
});
