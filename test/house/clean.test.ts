import { readdirSync, readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';

/** Made here, fetched, or kept by git itself. */
const PASSED_OVER = ['node_modules', '.git', 'dist', 'out', 'coverage'];

/** The files of the project, with or without its history at hand. */
const projectFiles = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (PASSED_OVER.includes(entry.name)) return [];
    return entry.isDirectory() ? projectFiles(path) : entry.isFile() ? [path] : [];
  });

const texts = projectFiles('.').map((path) => ({ path, text: readFileSync(path, 'latin1') }));

test('no file names a place that is only on one machine', () => {
  const places = [process.cwd(), homedir()].filter((place) => place.length > 1);
  const found = texts.filter(({ text }) => places.some((place) => text.includes(place)));
  expect(found.map(({ path }) => path)).toEqual([]);
});

test('what is installed comes from the public registry alone, each with its checksum', () => {
  const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8')) as {
    readonly packages: Readonly<Record<string, { readonly resolved?: string; readonly integrity?: string }>>;
  };
  const fetched = Object.entries(packages).filter(([path]) => path !== '');
  expect(fetched.length).toBeGreaterThan(0);
  expect(fetched.filter(([, { integrity }]) => integrity === undefined)).toEqual([]);
});
