import { chmodSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { GAPING, plica, SOUND } from '../support/command-line.js';
import { gitWithPlica, plicaIn } from '../support/program.js';
import { type ScratchRepository, scratchRepository } from '../support/repository.js';

const UNTIDY = 'units in\nenvelope   half-letter { card: 8 1/2 x 5 1/2 }\n';
const BROKEN = 'units in\n\nenvelope half-letter { card: }\n';

const STYLE = (ease: string): string => `units in\n\nstyle house {\n  ease: ${ease}\n}\n`;
const STYLED = 'units in\n\nuse "house.plica"\n\nenvelope half-letter like house { card: 8 1/2 x 5 1/2 }\n';

/** A repository where `staged` is what the next commit would have, and `work` what lies in the folder. */
function between(staged: Files, work: Files): ScratchRepository {
  const repository = scratchRepository();
  repository.put(staged);
  repository.git('add', '--all');
  repository.put(work);
  return repository;
}

type Files = Parameters<ScratchRepository['put']>[0];

test('what is staged is checked, whatever lies in the work tree', async () => {
  const bad = between({ 'a.plica': GAPING }, { 'a.plica': SOUND });
  expect(await plicaIn(bad, ['check'])).toMatchObject({ code: 0 });
  const { code, out } = await plicaIn(bad, ['check', '--staged']);
  expect(code).toBe(1);
  expect(out).toContain('a.plica');

  const good = between({ 'a.plica': SOUND }, { 'a.plica': GAPING, 'new.plica': BROKEN });
  expect(await plicaIn(good, ['check'])).toMatchObject({ code: 1 });
  expect(await plicaIn(good, ['check', '--staged'])).toEqual({
    code: 0,
    out: 'nothing wrong in 1 envelope of 1 file\n',
    err: '',
  });
});

test('the layout of what is staged is checked, whatever lies in the work tree', async () => {
  const untidy = between({ 'a.plica': UNTIDY }, { 'a.plica': SOUND });
  expect(await plicaIn(untidy, ['format', '--check', '--staged'])).toEqual({
    code: 1,
    out: 'a.plica\n',
    err: 'would format 1 of 1 file\n',
  });
  const tidy = between({ 'a.plica': SOUND }, { 'a.plica': UNTIDY });
  expect(await plicaIn(tidy, ['format', '--check', '--staged'])).toMatchObject({ code: 0 });
});

test('what a recipe uses is read as it is staged too', async () => {
  const wide = between({ 'a.plica': STYLED, 'house.plica': STYLE('0') }, { 'house.plica': STYLE('1/8') });
  expect(await plicaIn(wide, ['check'])).toMatchObject({ code: 0 });
  expect(await plicaIn(wide, ['check', '--staged'])).toMatchObject({ code: 1 });
  const gone = between({ 'a.plica': STYLED }, { 'house.plica': STYLE('1/8') });
  const { code, out } = await plicaIn(gone, ['check', '--staged']);
  expect(code).toBe(1);
  expect(out).toContain('house.plica');
});

test('without a path all of the repository is read, from any of its folders; with one, that', async () => {
  const repository = between(
    { 'a.plica': GAPING, 'cards/b.plica': SOUND.replace('half-letter', 'other'), 'notes/to-do.txt': '' },
    {},
  );
  const from = (folder: string, ...paths: readonly string[]) =>
    plicaIn(repository, ['check', '--staged', '--format', 'line', ...paths], folder);
  expect((await from('.')).out).toMatch(/^a\.plica:\d/);
  expect((await from('cards')).out).toMatch(/^\.\.\/a\.plica:\d/);
  expect(await from('cards', '.')).toEqual({ code: 0, out: '', err: '' });
  expect(await from('.', 'cards')).toEqual({ code: 0, out: '', err: '' });
  expect((await from('notes', '../a.plica')).code).toBe(1);
});

test('a repository in which no recipe is staged has nothing wrong in it', async () => {
  const repository = between({ 'README.md': 'Tide tables.\n' }, { 'a.plica': GAPING });
  expect(await plicaIn(repository, ['check', '--staged'])).toEqual({ code: 0, out: '', err: '' });
  expect(await plicaIn(repository, ['format', '--check', '--staged'])).toMatchObject({ code: 0, out: '' });
  expect(await plicaIn(scratchRepository(), ['check', '--staged'])).toMatchObject({ code: 0 });
});

test('files in which a merge left conflicts are named', async () => {
  const repository = scratchRepository();
  const { git, commit } = repository;
  commit('Two', { 'tide  table.plica': SOUND, 'b.plica': SOUND.replace('half-letter', 'b') });
  git('branch', 'other');
  commit('Ours', { 'tide  table.plica': SOUND.replace('8 1/2', '8') });
  git('checkout', '--quiet', 'other');
  commit('Theirs', { 'tide  table.plica': SOUND.replace('8 1/2', '9') });
  expect(() => git('merge', '--quiet', 'main')).toThrow();
  const said = 'plica: tide  table.plica: a merge left conflicts in it; settle them first\n';
  for (const command of [['check'], ['format', '--check']]) {
    const { code, err } = await plicaIn(repository, [...command, '--staged']);
    expect(code).toBe(2);
    expect(err).toContain(said);
    expect(await plicaIn(repository, [...command, '--staged', 'b.plica'])).toMatchObject({ code: 0 });
  }
});

test('names that look like something else are only names', async () => {
  const names = [
    '-f.plica',
    '--fix.plica',
    'ebb "and" flow.plica',
    "o'clock $(touch x) `y`.plica",
    'two\nlines.plica',
  ];
  const named = (text: string, index: number) => text.replace(/half-letter|gaping/, `tide-${index}`);
  const repository = between(
    Object.fromEntries(names.map((name, index) => [name, named(GAPING, index)])),
    {},
  );
  const { code, out } = await plicaIn(repository, ['check', '--staged', '--format', 'line']);
  expect(code).toBe(1);
  expect([...out.matchAll(/^(.*?):\d+:\d+: error:/gm)].map(([, name]) => name).sort()).toEqual(
    names.map((name) => name.replace('\n', ' ')).sort(),
  );
  for (const name of names) {
    expect(await plicaIn(repository, ['check', '--staged', '--', name])).toMatchObject({ code: 1, err: '' });
  }
});

/** What cannot be asked for, and what is said. */
const REFUSED: readonly (readonly [line: string, said: string])[] = [
  [
    'check --staged --fix',
    '`check --fix` writes into files, and what is staged is none; leave `--staged` out',
  ],
  [
    'check --staged -',
    '`--staged` reads what git keeps, and standard input is not among it; leave one of them out',
  ],
  ['format --staged', 'what is staged is only looked at, not written: `format --check --staged`'],
  [
    'format --check --staged -',
    '`--staged` reads what git keeps, and standard input is not among it; leave one of them out',
  ],
  ['check --staged new.plica', 'new.plica: nothing of it is staged'],
  ['check --staged nowhere.plica', 'nowhere.plica: there is no such file or folder'],
  ['check --staged a.plcia', 'a.plcia: there is no such file or folder; did you mean `a.plica`?'],
];

test.each(REFUSED)('plica %s', async (line, said) => {
  const repository = between({ 'a.plica': SOUND }, { 'new.plica': SOUND });
  expect(await plicaIn(repository, line.split(' '))).toEqual({ code: 2, out: '', err: `plica: ${said}\n` });
  expect(repository.git('status', '--porcelain')).toBe('A  a.plica\n?? new.plica');
});

test('outside a repository, or without git, it is said', async () => {
  const { code, err } = await plica('check --staged', { files: { 'a.plica': SOUND } });
  expect({ code, err }).toEqual({ code: 2, err: 'plica: git is not installed\n' });
  const bare = scratchRepository('--bare');
  expect(await plicaIn(bare, ['check', '--staged'])).toEqual({
    code: 2,
    out: '',
    err: 'plica: in a bare repository nothing can be staged\n',
  });
});

/** The hook that the README gives. */
const HOOK = `#!/bin/sh
plica check --staged &&
plica format --check --staged
`;

/** A repository whose commits a hook looks at first. */
function hooked() {
  const repository = scratchRepository();
  const hook = join(repository.top, '.git/hooks/pre-commit');
  mkdirSync(dirname(hook), { recursive: true });
  writeFileSync(hook, HOOK);
  chmodSync(hook, 0o755);
  const commit = (...paths: readonly string[]) =>
    gitWithPlica(repository, ['commit', '--quiet', '-m', 'A step', ...paths]);
  const stage = (files: Files): void => {
    repository.put(files);
    repository.git('add', '--all');
  };
  return { ...repository, stage, commit };
}

test('a hook refuses a bad recipe that is staged, although the work tree is fine', () => {
  const { git, stage, put, commit } = hooked();
  stage({ 'a.plica': GAPING });
  put({ 'a.plica': SOUND });
  const { code, out, err } = commit();
  expect(code).toBe(1);
  expect(out + err).toContain('a.plica');
  expect(() => git('rev-parse', '--verify', '--quiet', 'HEAD')).toThrow();
});

test('a hook lets a good recipe pass, although the work tree is broken', () => {
  const { git, stage, put, commit } = hooked();
  stage({ 'a.plica': SOUND });
  put({ 'a.plica': BROKEN, 'b.plica': GAPING });
  expect(commit()).toMatchObject({ code: 0 });
  expect(git('show', 'HEAD:a.plica')).toBe(SOUND.trimEnd());
});

test('a hook refuses what is not laid out', () => {
  const { stage, commit } = hooked();
  stage({ 'a.plica': UNTIDY });
  expect(commit()).toMatchObject({ code: 1 });
});

test('a hook sees the very content that a commit of some files, or of all, would have', () => {
  const { stage, put, commit } = hooked();
  const other = (text: string): string => text.replace('half-letter', 'other');
  stage({ 'a.plica': SOUND, 'b.plica': other(SOUND) });
  expect(commit()).toMatchObject({ code: 0 });
  put({ 'a.plica': SOUND.replace('8 1/2', '8'), 'b.plica': GAPING });
  expect(commit('--all')).toMatchObject({ code: 1 });
  expect(commit('b.plica')).toMatchObject({ code: 1 });
  expect(commit('a.plica')).toMatchObject({ code: 0 });
});
