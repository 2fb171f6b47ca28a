import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { expect, test } from 'vitest';
import { programFiles } from './rooms.js';

/** Every problem that some file declares, with that file. */
const problems = programFiles().flatMap((file) =>
  [...readFileSync(file, 'utf8').matchAll(/: Problem = \{\s*name: '([^']+)'/g)].map(({ 1: name = '' }) => ({
    name,
    file,
  })),
);

/** The names of every finding that is laid down under test/, as people see it. */
const shown = new Set(
  readdirSync('test', { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.findings.txt'))
    .flatMap((name) => [
      ...readFileSync(join('test', name), 'utf8').matchAll(/^(?:error|warning|note)\[([a-z-]+)\]/gm),
    ])
    .map(({ 1: name }) => name),
);

test('there are problems, and each has a name of its own', () => {
  const names = problems.map(({ name }) => name);
  expect(names.length).toBeGreaterThan(10);
  expect([...new Set(names)]).toEqual(names);
});

test.each(problems)('$name is shown by a refused recipe', ({ name }) => {
  expect([...shown]).toContain(name);
});

test('a rule’s file is named after its problem', () => {
  const rules = problems.filter(({ file }) => file.startsWith('src/rules/'));
  expect(rules.map(({ name }) => name)).toEqual(rules.map(({ file }) => basename(file, '.ts')));
});
