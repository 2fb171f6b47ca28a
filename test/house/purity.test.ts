import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { programFiles, roomOf } from './rooms.js';

/** Lines of the program, outside some rooms, that a pattern finds. */
const lines = (pattern: RegExp, except: readonly string[] = []): readonly string[] =>
  programFiles()
    .filter((file) => !except.includes(roomOf(file)))
    .flatMap((file) =>
      readFileSync(file, 'utf8')
        .split('\n')
        .map((text, index) => `${file}:${index + 1}: ${text.trim()}`),
    )
    .filter((line) => pattern.test(line.replace(/^\S+ /, '')));

test('no clock and no dice: the same input gives the same output', () => {
  expect(
    lines(
      /\bDate\.now\b|new Date\(\)|Math\.random|performance\.now|\bcrypto\.|random(?:Bytes|UUID|Int)|getRandomValues/,
    ),
  ).toEqual([]);
});

test('nothing depends on the language that the machine speaks', () => {
  expect(lines(/localeCompare|toLocale|Intl\./)).toEqual([]);
});

test('only the host and the process’s entrance know the process', () => {
  const known = lines(/\bprocess\.\w/, ['src/host']);
  expect(known.filter((line) => !line.startsWith('src/cli/main.ts:'))).toEqual([]);
});

test('nothing is exported by default', () => {
  expect(lines(/^export default\b/)).toEqual([]);
});
