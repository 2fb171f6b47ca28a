import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { GAPING, SOUND } from '../support/command-line.js';
import { scratch } from '../support/scratch.js';

const PROGRAM = resolve('dist/plica.cjs');

/** Runs the built program as a process of its own. */
function plica(cwd: string, args: readonly string[], more: { readonly input?: string } = {}) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, ...args], {
    cwd,
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1' },
    ...more,
  });
  return { code: status, out: stdout, err: stderr };
}

test('check, from a file and from standard input', () => {
  const folder = scratch({ 'a.plica': SOUND, 'b.plica': GAPING });
  expect(plica(folder, ['check', 'a.plica'])).toEqual({
    code: 0,
    out: 'nothing wrong in 1 envelope of 1 file\n',
    err: '',
  });
  expect(plica(folder, ['check'])).toMatchObject({ code: 1, err: '' });
  expect(plica(folder, ['check', '-'], { input: SOUND })).toMatchObject({ code: 0 });
  expect(plica(folder, ['check', '-'], { input: GAPING })).toMatchObject({ code: 1 });
});

test('build writes its files with the fonts that come with the program', () => {
  const folder = scratch({ 'a.plica': SOUND });
  const { code, err } = plica(folder, ['build', 'a.plica', '--out', 'deep/out']);
  expect(code).toBe(0);
  expect(err).toContain('deep/out/half-letter.cut-sheet.pdf');
  expect(readdirSync(join(folder, 'deep/out'))).toEqual([
    'half-letter.cut-sheet.pdf',
    'half-letter.svg',
    'half-letter.template.pdf',
  ]);
});

test('an output folder that cannot be written: said, 2, nothing written, nothing lost', () => {
  const folder = scratch({ 'a.plica': SOUND, out: 'mine' });
  const { code, out, err } = plica(folder, ['build', 'a.plica', '--out', 'out']);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toMatch(/^plica: .*out cannot be written: a file is in its place\n$/);
  expect(readFileSync(join(folder, 'out'), 'utf8')).toBe('mine');
  expect(readdirSync(folder).sort()).toEqual(['a.plica', 'out']);
});

test('a file of the user’s that has the name of an output’s folder stays', () => {
  const folder = scratch({ 'a.plica': SOUND, 'out/notes.txt': 'mine' });
  mkdirSync(join(folder, 'out/half-letter.template.pdf'));
  expect(plica(folder, ['build', 'a.plica', '--out', 'out'])).toMatchObject({ code: 2 });
  expect(readdirSync(join(folder, 'out')).sort()).toEqual(['half-letter.template.pdf', 'notes.txt']);
});

/** What is given to `check`, and what is said. */
const BAD: readonly (readonly [what: string, code: number, said: RegExp])[] = [
  ['latin.plica', 2, /^plica: latin\.plica: line 1 is not UTF-8/],
  ['nowhere.plica', 2, /^plica: nowhere\.plica: there is no such file or folder\n/],
  ['drawer', 2, /^plica: drawer: there are no recipes/],
  ['units.plica', 1, /^error\[unknown-name\]/],
  ['zero.plica', 1, /^error\[range\]/],
  ['negative.plica', 1, /^error\[range\]/],
  ['huge.plica', 1, /^error\[range\]/],
  ['cardless.plica', 1, /^error\[missing\]/],
  ['empty.plica', 0, /^nothing wrong in 1 file, but no envelope in it either\n/],
];

test.each(BAD)('check %s', (path, code, said) => {
  const folder = scratch({
    'latin.plica': Uint8Array.of(0x23, 0xe9),
    'units.plica': 'units ell\nenvelope a { card: A6 }\n',
    'zero.plica': 'envelope a { card: 0 mm x 1 mm }\n',
    'negative.plica': 'envelope a {\n card: A6\n bulk: -1 mm\n}\n',
    'huge.plica': 'envelope a { card: 1000000 mm x 1 mm }\n',
    'cardless.plica': 'envelope a { }\n',
    'empty.plica': '',
  });
  mkdirSync(join(folder, 'drawer'));
  const result = plica(folder, ['check', path]);
  expect(result.code).toBe(code);
  expect(result.out + result.err).toMatch(said);
  expect(result.out + result.err).not.toContain('    at ');
});

test('a reader that goes away is no error', () => {
  const folder = scratch({ 'a.plica': GAPING });
  const script = `"${process.execPath}" "${PROGRAM}" show a.plica | true; exit "\${PIPESTATUS[0]}"`;
  const { status, stderr } = spawnSync('bash', ['-c', script], { cwd: folder, encoding: 'utf8' });
  expect({ status, stderr }).toEqual({ status: 1, stderr: '' });
});

test('a bug says so, and how to report it; the details only when asked for', () => {
  const folder = scratch({ 'a.plica': SOUND });
  const broken = join(folder, 'dist');
  mkdirSync(broken);
  for (const name of ['plica.cjs', 'program.cjs', 'further.cjs']) {
    writeFileSync(join(broken, name), readFileSync(join(PROGRAM, '..', name)));
  }
  expect(existsSync(join(broken, 'fonts'))).toBe(false);
  const build = (env: object) =>
    spawnSync(process.execPath, [join(broken, 'plica.cjs'), 'build', 'a.plica', '--out', 'out'], {
      cwd: folder,
      encoding: 'utf8',
      env: { ...process.env, ...env },
    });
  const { status, stdout, stderr } = build({});
  expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
  expect(stderr).toMatch(
    /^plica: something went wrong that is no fault of your recipe: .*\nPlease report it: /,
  );
  expect(stderr).not.toContain('    at ');
  expect(build({ PLICA_DEBUG: '1' }).stderr).toContain('    at ');
  expect(existsSync(join(folder, 'out'))).toBe(false);
});

test('the package holds the program and what it needs, and nothing else', () => {
  const { stdout } = spawnSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
    encoding: 'utf8',
  });
  const [{ files }] = JSON.parse(stdout) as [{ readonly files: readonly { readonly path: string }[] }];
  const paths = files.map(({ path }) => path);
  for (const path of [
    'LICENSE',
    'README.md',
    'grammar/reference.md',
    'dist/plica.cjs',
    'dist/program.cjs',
    'dist/further.cjs',
    'dist/index.js',
    'dist/types/src/index.d.ts',
    'dist/difference.schema.json',
    'dist/facts.schema.json',
    'dist/log.schema.json',
    'dist/fonts/regular.ttf',
    'dist/fonts/bold.ttf',
    'dist/fonts/LICENSE_FONT',
    'dist/THIRD-PARTY-NOTICES.txt',
  ]) {
    expect(paths).toContain(path);
  }
  expect(paths.filter((path) => /^(src|test|specs)\/|^grammar\/.*\.ts$/.test(path))).toEqual([]);
});

test('the program is plain ASCII, since it is read byte for byte', () => {
  for (const pack of ['dist/program.cjs', 'dist/further.cjs'])
    expect(readFileSync(pack).every((byte) => byte < 0x80)).toBe(true);
});

test('every kind of file comes out of the program as it is shipped, those that other libraries write among them', () => {
  const folder = scratch({ 'a.plica': SOUND });
  expect(plica(folder, ['build', 'a.plica', '--emit', 'all', '--out', 'out']).code).toBe(0);
  const endings = readdirSync(join(folder, 'out')).map((name) => name.replace(/^[^.]*/, ''));
  expect(endings).toEqual(expect.arrayContaining(['.cut-sheet.pdf', '.dxf', '.fold', '.print.pdf', '.svg']));
});

test('many files, shared among threads: every finding, in the order of the files', () => {
  const name = (file: number, of: number): string => `card-${file}-${of}`;
  const recipe = (file: number): string =>
    `units in\n# ${'ebb and flow '.repeat(1300)}\n${Array.from({ length: 20 }, (_, of) => `envelope ${name(file, of)} {\n  card: 8 1/2 x 5 1/2\n${of === 7 ? '  blank: 10\n' : ''}}\n`).join('')}`;
  const files = Array.from({ length: 60 }, (_, file) => [`${file + 100}.plica`, recipe(file)] as const);
  expect(files.map(([, text]) => text).join('').length).toBeGreaterThan(1_000_000);
  const folder = scratch(Object.fromEntries(files));
  const { code, out, err } = plica(folder, ['check', '--format', 'line']);
  expect({ code, err }).toEqual({ code: 1, err: '' });
  const found = out
    .trimEnd()
    .split('\n')
    .filter((line) => line.includes('creases-cross'));
  expect(found.map((line) => /card-\d+-\d+/.exec(line)?.[0])).toEqual(files.map((_, file) => name(file, 7)));
});
