/* grammar/reference.md documents by things that run: its examples compile, and its tables are the code's own. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { EXPECT_NAMES } from '../../src/recipe/expect-names.js';
import { PROPERTIES } from '../../src/recipe/properties.js';
import { compileText } from '../support/compile-text.js';

const reference = readFileSync('grammar/reference.md', 'utf8');

const fenced = (language: string): readonly string[] =>
  [...reference.matchAll(new RegExp(`^\`\`\`${language}\\n([\\s\\S]*?)^\`\`\``, 'gm'))].map(
    ([, text = '']) => text,
  );

/** The rows of the table under a heading, each cell trimmed. */
function rows(heading: string): readonly (readonly string[])[] {
  const section = reference.split(`\n## ${heading}\n`)[1]?.split('\n## ')[0] ?? '';
  return section
    .split('\n')
    .filter((line) => line.startsWith('| `'))
    .map((line) => line.slice(2, -2).split(' | '));
}

const errorsOf = (text: string) =>
  compileText(text).diagnostics.filter(({ severity }) => severity === 'error');

test.each(fenced('plica'))('an example compiles: %s', (text) => {
  expect(errorsOf(text).map(({ message }) => message)).toEqual([]);
  expect(compileText(text).recipes.length).toBeGreaterThan(0);
});

test.each(fenced('plica-wrong'))('a wrong example is refused: %s', (text) => {
  expect(errorsOf(text).length).toBeGreaterThan(0);
});

test.each([
  ['Properties of an envelope or a style', 'envelope'],
  ['Properties of a paper', 'paper'],
] as const)('%s are those of the code', (heading, type) => {
  const known = Object.entries(PROPERTIES)
    .filter(([, { where }]) => (where as readonly string[]).includes(type))
    .map(([name, { kind, leftOut, meaning }]) => [`\`${name}\``, kind.wants, leftOut, meaning]);
  expect(rows(heading)).toEqual(known);
});

test('the names an expect may use are those of the code', () => {
  expect(rows('Expectations')).toEqual(
    [...EXPECT_NAMES].map(([name, dimension]) => [`\`${name}\``, dimension]),
  );
});

test('every problem has its row', () => {
  const declared = readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .flatMap((name) => [...readFileSync(`src/${name}`, 'utf8').matchAll(/: Problem = \{\s*name: '([^']+)'/g)])
    .map(([, name]) => `\`${name}\``);
  expect(rows('Findings').map(([name]) => name)).toEqual(declared.sort());
});
