import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** Made where it is needed, and kept by nobody. */
const MADE = ['test/fuzz/crashes'];

test('every file and folder that DEVELOPERS.md names is there', () => {
  const named = [
    ...readFileSync('DEVELOPERS.md', 'utf8').matchAll(/`((?:src|grammar|test|specs)\/[\w./-]*)[`#]/g),
  ].map(([, path = '']) => path);
  expect(named.length).toBeGreaterThan(50);
  expect(named.filter((path) => !existsSync(path) && !MADE.includes(path))).toEqual([]);
});

test('every decision is found by what it is about', () => {
  const [, decisions = ''] = readFileSync('DEVELOPERS.md', 'utf8').split('\n## Decisions\n');
  const stated = [...decisions.matchAll(/^(\d+)\. /gm)].map(([, number]) => Number(number));
  const listed = [...decisions.matchAll(/^\| .* \| ([\d, to]+) \|$/gm)]
    .flatMap(([, numbers = '']) => numbers.split(', '))
    .flatMap((part) => {
      const [first = 0, last = first] = part.split(' to ').map(Number);
      return Array.from({ length: last - first + 1 }, (_, index) => first + index);
    });
  expect(stated).toEqual(stated.map((_, index) => index + 1));
  expect([...new Set(listed)].sort((a, b) => a - b)).toEqual(stated);
});
