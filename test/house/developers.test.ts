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
