/* Folders that may not be written, files that may not be read, folders that vanish. */
import { chmodSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import type { Ran } from '../support/program.js';
import { scratch } from '../support/scratch.js';
import { SOUND } from './recipes.js';
import { expectPlainWords, filesIn, plica, PROGRAM, shell } from './run-built.js';

/** Whoever may do anything heeds no permissions: then the program is run as nobody in particular. */
const AS = process.getuid?.() === 0 ? 'setpriv --reuid=65534 --regid=65534 --clear-groups ' : '';
const heedsPermissions =
  process.platform !== 'win32' && shell('/', `${AS}test -r "$PROGRAM" -a ! -w /`).code === 0;

/** What ends every complaint where the working folder has been taken away. */
const FOLDER_GONE =
  'plica: this working folder has been taken away: go to one that is there, and try again\n';

/** Runs the program as somebody who is held to permissions. */
const held = (folder: string, args: string): Ran => shell(folder, `${AS}"$NODE" "$PROGRAM" ${args}`);

/** Files and folders with some of their permissions changed, all else open to everybody. */
function withModes(files: Readonly<Record<string, string>>, modes: Readonly<Record<string, number>>): string {
  const folder = scratch(files);
  chmodSync(folder, 0o777);
  for (const [path, mode] of Object.entries(modes)) chmodSync(join(folder, path), mode);
  onTestFinished(() => {
    for (const path of Object.keys(modes)) chmodSync(join(folder, path), 0o777);
  });
  return folder;
}

describe.skipIf(!heedsPermissions)('permissions (of whoever is held to them)', () => {
  const FILES = { 'specs/a.plica': SOUND, 'shut/half-letter.svg': 'old', 'shut/tides.csv': 'old' };

  test.each([
    ['build specs --emit svg --out shut'],
    ['build specs --emit svg --out shut/deeper'],
    ['build specs --emit facts --out shut'],
    ['catalogue specs --out shut/tides.csv'],
    ['catalogue specs --no-cache --out shut/tides.pdf'],
  ])('%s, into a folder that may not be written', (args) => {
    const folder = withModes(FILES, { shut: 0o555 });
    const ran = held(folder, args);
    expect(ran).toMatchObject({ code: 2, out: '' });
    expect(ran.err).toMatch(/^plica: .*shut.* cannot be written: permission denied\n$/);
    expect(filesIn(join(folder, 'shut'))).toEqual({ 'half-letter.svg': 'old', 'tides.csv': 'old' });
  });

  test.each([['check'], ['show'], ['build --emit svg --out out'], ['format --check']])(
    '%s, of a file that may not be read: it is named, the others are done',
    (args) => {
      const folder = withModes({ 'a.plica': SOUND, 'b.plica': SOUND }, { 'b.plica': 0o000 });
      const ran = held(folder, `${args} a.plica b.plica`);
      expect(ran.code).toBe(2);
      expect(ran.err).toContain('plica: b.plica: permission denied\n');
      expectPlainWords(ran);
    },
  );

  test('a folder that may not be looked into is named, and the others are looked into', () => {
    const folder = withModes({ 'open/a.plica': SOUND, 'shut/b.plica': SOUND }, { shut: 0o000 });
    expect(held(folder, 'check .')).toEqual({
      code: 2,
      out: 'nothing wrong in 1 envelope of 1 file\n',
      err: 'plica: shut: permission denied\n',
    });
  });

  test('what a recipe uses and may not be read is said where it is used', () => {
    const folder = withModes(
      { 'a.plica': `units in\nuse "b.plica"\n\nenvelope a { card: 3 x 4 }\n`, 'b.plica': 'let b = 1\n' },
      { 'b.plica': 0o000 },
    );
    const { code, out } = held(folder, 'check a.plica');
    expect(code).toBe(1);
    expect(out).toContain('the file `b.plica` cannot be read\n  --> a.plica:2:5\n');
    expect(out).toContain('permission denied');
  });
});

test('the folder of outputs gone, and a file in its place: the file stays', () => {
  const folder = scratch({ 'a.plica': SOUND });
  for (const args of [
    ['build', 'a.plica', '--emit', 'svg', '--out', 'out'],
    ['catalogue', '.', '--out', 'out/tides.csv'],
  ]) {
    expect(plica(folder, ...args)).toMatchObject({ code: 0 });
    rmSync(join(folder, 'out'), { recursive: true });
    writeFileSync(join(folder, 'out'), 'mine');
    const ran = plica(folder, ...args);
    expect(ran).toMatchObject({ code: 2, out: '' });
    expect(ran.err).toMatch(/^plica: .*out.* cannot be written: .*a file.*\n$/);
    expect(readFileSync(join(folder, 'out'), 'utf8')).toBe('mine');
    rmSync(join(folder, 'out'));
  }
});

test('a link that led to the folder of outputs, and leads nowhere now', () => {
  const folder = scratch({ 'a.plica': SOUND });
  const ran = shell(folder, 'ln -s gone out; plica build a.plica --emit svg --out out');
  expect(ran).toMatchObject({ code: 2, out: '' });
  expect(ran.err).toMatch(/^plica: .*out.* cannot be written: /);
  expectPlainWords(ran);
});

test('a file whose folder is gone by now', () => {
  const folder = scratch({ 'deep/specs/a.plica': SOUND });
  mkdirSync(join(folder, 'out'));
  expect(plica(folder, 'check', 'deep/specs/a.plica')).toMatchObject({ code: 0 });
  rmSync(join(folder, 'deep'), { recursive: true });
  for (const args of [['check'], ['show'], ['build', '--out', 'out'], ['format']]) {
    const [command = '', ...options] = args;
    expect(plica(folder, command, 'deep/specs/a.plica', ...options)).toEqual({
      code: 2,
      out: '',
      err: 'plica: deep/specs/a.plica: there is no such file or folder\n',
    });
  }
  expect(filesIn(join(folder, 'out'))).toEqual({});
});

test.skipIf(process.platform === 'win32').each([
  ['check x.plica', 'x.plica'],
  ['check', '.'],
  ['build --out out', '.'],
])('`plica %s` in a working folder that has been taken away', (args, named) => {
  const ran = shell(scratch(), `mkdir gone; cd gone; rmdir ../gone; plica ${args}`);
  expect(ran).toEqual({
    code: 2,
    out: '',
    err: `plica: ${named}: there is no such file or folder\n${FOLDER_GONE}`,
  });
});

test
  .skipIf(process.platform === 'win32')
  .each([
    ['new tides'],
    ['show .'],
    ['format'],
    ['plan'],
    ['catalogue --out tides.csv'],
    ['log a.plica#tides'],
    ['git-setup --program plica'],
    ['git-text a.plica'],
    ['check --staged'],
    ['diff'],
    ['watch'],
  ])('`plica %s` there says that the folder is gone, in plain words', (args) => {
  const ran = shell(scratch(), `mkdir gone; cd gone; rmdir ../gone; plica ${args}`);
  expect(ran).toMatchObject({ code: 2, out: '' });
  expect(ran.err).toMatch(new RegExp(`^plica: .*\n${FOLDER_GONE}$`));
  expectPlainWords(ran);
});

test.skipIf(process.platform === 'win32')('there, git is not said to be missing', () => {
  const { code, err } = shell(scratch(), 'mkdir gone; cd gone; rmdir ../gone; plica diff HEAD');
  expect(code).toBe(2);
  expect(err).toMatch(/^plica: HEAD: .*\(the working folder is gone\)\n/);
});

test.skipIf(process.platform === 'win32')(
  'what is found without the working folder is checked and built as ever',
  () => {
    const folder = scratch({ 'a.plica': SOUND });
    const ran = shell(
      folder,
      'mkdir gone; cd gone; rmdir ../gone; plica build ../a.plica --emit svg --out ../out; plica check - < ../a.plica',
    );
    expect(ran).toMatchObject({ code: 0, out: 'nothing wrong in 1 envelope of 1 file\n' });
    expect(Object.keys(filesIn(join(folder, 'out')))).toEqual(['half-letter.svg']);
  },
);

test('the program is where these tests look for it', () => {
  expect(plica('/', '--version')).toMatchObject({ code: 0, err: '' });
  expect(PROGRAM).toMatch(/dist.plica\.cjs$/);
});
