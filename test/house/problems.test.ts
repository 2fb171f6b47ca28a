import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { exampleFindings } from '../../src/cli/example-findings.js';
import { PROBLEMS } from '../../src/problems.js';
import { compileText } from '../support/compile-text.js';
import { programFiles } from './rooms.js';

/** Every problem that some file declares, with that file. */
const declared = programFiles().flatMap((file) =>
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
  const names = declared.map(({ name }) => name);
  expect(names.length).toBeGreaterThan(10);
  expect([...new Set(names)]).toEqual(names);
});

test('every problem that a file declares is in the one list', () => {
  expect(PROBLEMS.map(({ name }) => name).toSorted()).toEqual(declared.map(({ name }) => name).toSorted());
});

test('a rule’s file is named after its problem', () => {
  const rules = declared.filter(({ file }) => file.startsWith('src/rules/'));
  expect(rules.map(({ name }) => name)).toEqual(rules.map(({ file }) => basename(file, '.ts')));
});

describe.each(PROBLEMS)('$name', ({ name, severity, meaning, matters, remedy, example }) => {
  const found = (text: string): string[] =>
    exampleFindings(example, text).map(({ problem, severity: graded }) => `${graded} ${problem.name}`);

  test('is shown by a refused recipe', () => {
    expect([...shown]).toContain(name);
  });

  test('is explained in sentences', () => {
    for (const told of [meaning, matters, remedy]) expect(told).toMatch(/^[`A-Z].+\.$/);
  });

  test('has an example in which nothing else is found', () => {
    expect(found(example.wrong)).toEqual([`${severity} ${name}`]);
  });

  test('has an example that comes out well once it is mended', () => {
    expect(found(example.mended)).toEqual([]);
    expect(compileText(example.mended).recipes).not.toEqual([]);
  });
});
