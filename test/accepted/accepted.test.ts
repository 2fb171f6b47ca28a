import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { renderText } from '../../src/diagnostics/render-text.js';
import { parse } from '../../grammar/parser.js';
import { format } from '../../src/format/format.js';
import { EXPECT_NAMES } from '../../src/recipe/expect-names.js';
import { source } from '../../src/text/source.js';
import { compileText } from '../support/compile-text.js';

const recipes = readdirSync(import.meta.dirname, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.plica'))
  .sort();

/** Every recipe by its path: one may use another. */
const files = Object.fromEntries(
  recipes.map((name) => [name, readFileSync(join(import.meta.dirname, name), 'utf8')]),
);

test.each(recipes)('nothing is found in %s', (name) => {
  const text = files[name] ?? '';
  expect(text).toMatch(/^\uFEFF?# /);
  expect(renderText(compileText(text, { name, files }).diagnostics)).toBe('');
});

test.each(recipes)('%s has the one layout', (name) => {
  const text = files[name] ?? '';
  expect(format(parse(source(name, text)).file)).toBe(text);
});

test('there are enough to learn from, accepted and rejected', () => {
  const rejected = readdirSync('test/rejected', { recursive: true, encoding: 'utf8' });
  expect(recipes.length).toBeGreaterThanOrEqual(40);
  expect(rejected.filter((name) => name.endsWith('.findings.txt')).length).toBeGreaterThanOrEqual(80);
});

test('every figure that can be expected is expected somewhere', () => {
  const expected = Object.values(files).flatMap((text) => [...text.matchAll(/^ *expect ([a-z-]+)/gm)]);
  const named = new Set(expected.map(([, name]) => name));
  expect([...EXPECT_NAMES.keys()].filter((name) => !named.has(name))).toEqual([]);
});
