/* What may lie beside a recipe, or be given for one: ways out of the project, devices, pipes, files without an end. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { scratch } from '../support/scratch.js';
import { SOUND } from './recipes.js';
import { expectPlainWords, plica, shell } from './run-built.js';

/** A project with one recipe, beside a folder that is not of it; `{ROOT}` stands for the folder that holds both. */
function project(used: string): string {
  const folder = scratch({ 'theirs/c.plica': 'let c = 1\n', 'ours/.git/HEAD': '' });
  symlinkSync('../theirs/c.plica', join(folder, 'ours/link.plica'));
  symlinkSync('../theirs', join(folder, 'ours/door'));
  const text = `units in\n\nuse "${used.replace('{ROOT}', folder)}"\n`;
  writeFileSync(join(folder, 'ours/a.plica'), text);
  return folder;
}

describe.skipIf(process.platform === 'win32')('what a recipe may use', () => {
  test.each([
    ['../theirs/c.plica', 'outside-root'],
    ['../theirs/nothing.plica', 'outside-root'],
    ['door/../../theirs/c.plica', 'outside-root'],
    ['link.plica', 'outside-root'],
    ['door/c.plica', 'outside-root'],
    ['{ROOT}/theirs/c.plica', 'wrong-kind'],
    ['/dev/zero', 'wrong-kind'],
    ['', 'wrong-kind'],
    ['.', 'wrong-kind'],
  ])('`use "%s"` is refused', (used, rule) => {
    const ran = plica(project(used), 'check', 'ours', '--format', 'line');
    expect(ran).toMatchObject({ code: 1, err: '' });
    expect(ran.out).toMatch(new RegExp(`^ours/a\\.plica:3:5: error: ${rule}: .*\n$`));
  });

  test('a pipe or a folder by the name of a recipe', () => {
    for (const make of ['mkfifo', 'mkdir']) {
      const folder = project('b.plica');
      spawnSync(make, [join(folder, 'ours/b.plica')]);
      const ran = plica(folder, 'check', 'ours', '--format', 'line');
      expect(ran).toMatchObject({ code: 1, err: '' });
      expect(ran.out).toContain('ours/a.plica:3:5: error: unknown-name: the file `b.plica` cannot be read');
    }
  });
});

/** Commands that read recipes. */
const READERS = ['check', 'show', 'format', 'build --emit svg --out out', 'diff a.plica'] as const;

describe.skipIf(process.platform === 'win32')('no command waits for what is no file', () => {
  test.each(READERS)('%s', (command) => {
    const folder = scratch({ 'a.plica': SOUND });
    spawnSync('mkfifo', [join(folder, 'pipe.plica')]);
    symlinkSync('/dev/zero', join(folder, 'link.plica'));
    for (const path of ['pipe.plica', 'link.plica', '/dev/zero']) {
      const ran = plica(folder, ...command.split(' '), path);
      expect(ran).toEqual({ code: 2, out: '', err: `plica: ${path}: it is a device or a pipe\n` });
    }
  });

  test('in a folder they are passed over', () => {
    const folder = scratch({ 'a.plica': SOUND });
    spawnSync('mkfifo', [join(folder, 'pipe.plica')]);
    symlinkSync('/dev/zero', join(folder, 'link.plica'));
    mkdirSync(join(folder, 'folder.plica'));
    expect(plica(folder, 'check')).toMatchObject({
      code: 0,
      out: 'nothing wrong in 1 envelope of 1 file\n',
    });
  });
});

test.skipIf(!existsSync('/proc/self/pagemap'))(
  'a file without an end that says it is empty is told as too long',
  () => {
    const folder = scratch({ 'a.plica': SOUND });
    symlinkSync('/proc/self/pagemap', join(folder, 'endless.plica'));
    for (const args of [['check'], ['check', 'endless.plica']]) {
      const { code, out, err } = plica(folder, ...args);
      expect(code).toBe(1);
      expect(`${out}${err}`).toContain(
        'error[limit]: this file is too long to be a recipe\n  --> endless.plica:1:1',
      );
    }
  },
);

test('a file of many gigabytes is told by its size, not read', () => {
  const folder = scratch({ 'a.plica': '' });
  truncateSync(join(folder, 'a.plica'), 2 ** 33);
  const ran = plica(folder, 'check', 'a.plica');
  expect(ran.code).toBe(1);
  expect(ran.out).toContain('it has 8,589,934,592 bytes, and at most 1,000,000 are read');
});

test
  .skipIf(process.platform === 'win32')
  .each(['yes "let a = 1" | plica check -', 'plica check - < /dev/zero'])(
  'a standard input without an end is given up: %s',
  (script) => {
    const ran = shell(scratch(), script);
    expect(ran).toMatchObject({ code: 1, err: '' });
    expect(ran.out).toMatch(/^error\[limit\]: this file is too long to be a recipe\n/);
    expectPlainWords(ran);
  },
);
