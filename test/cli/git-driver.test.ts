import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { plica, SOUND } from '../support/command-line.js';
import { gitWithPlica, plicaIn, type Ran } from '../support/program.js';
import { type ScratchRepository, scratchRepository } from '../support/repository.js';

const HOUSE = (ease: string): string => `units in\n\nstyle house {\n  ease: ${ease}\n}\n`;
const CARD = (name: string, width: string): string =>
  `units in\n\nuse "house.plica"\n\nenvelope ${name} like house {\n  card: ${width} x 5 1/2\n}\n`;

/** Runs git with plica as the program that compares, for this once. */
const withPlica = (repository: ScratchRepository, ...args: readonly string[]): Ran =>
  gitWithPlica(repository, args, { env: { GIT_EXTERNAL_DIFF: 'plica git-diff --' } });

const narrower = (text: string): string => text.replace('8 1/2', '8');

test('git diff tells what follows from a change', () => {
  const repository = scratchRepository();
  repository.commit('A card', { 'tide.plica': SOUND });
  repository.put({ 'tide.plica': narrower(SOUND) });
  const { code, out, err } = withPlica(repository, 'diff');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toMatch(/^plica diff tide\.plica\n\nhalf-letter: recut/);
  expect(out).toMatch(/card +8 1\/2 x 5 1\/2 → 8 x 5 1\/2/);
  expect(out).toMatch(/blank +11 1\/4 in → /);
  expect(out).toMatch(/\n1 envelope changed: 1 recut\n\n$/);
});

test('layout and comments are no change', () => {
  const repository = scratchRepository();
  repository.commit('A card', { 'tide.plica': SOUND });
  repository.put({ 'tide.plica': `# The year's card.\n${SOUND.replace('{ ', '{\n\n  ')}` });
  expect(withPlica(repository, 'diff')).toEqual({
    code: 0,
    out: 'plica diff tide.plica\n\nNothing changed\n\n',
    err: '',
  });
});

test('a file that comes, goes, or is renamed', () => {
  const repository = scratchRepository();
  const of = (name: string): string => SOUND.replace('half-letter', name);
  const long = (text: string): string => `# The year's card.\n# It started the book.\n# Keep it.\n${text}`;
  repository.commit('Cards', { 'gone.plica': of('ebb'), 'tide.plica': long(SOUND) });
  repository.git('rm', '--quiet', 'gone.plica');
  repository.git('mv', 'tide.plica', 'the tide.plica');
  repository.put({ 'the tide.plica': long(narrower(SOUND)), 'new.plica': of('new').replace('5 1/2', '4') });
  repository.git('add', '--all');
  const { code, out, err } = withPlica(repository, 'diff', '--cached', '--find-renames');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toMatch(/^plica diff gone\.plica\n\nebb: removed/m);
  expect(out).toMatch(/^plica diff new\.plica\n\nnew: added/m);
  expect(out).toMatch(/^plica diff tide\.plica → the tide\.plica\n\nhalf-letter: recut/m);
});

test('what a recipe uses is read from the work tree; a style tells of all the recipes it reaches', () => {
  const repository = scratchRepository();
  repository.commit('Cards', {
    'cards/tide.plica': CARD('tide', '8 1/2'),
    'cards/moon.plica': CARD('moon', '6'),
    'cards/house.plica': HOUSE('1/4'),
    'far.plica': SOUND.replace('half-letter', 'far'),
  });
  repository.put({ 'cards/house.plica': HOUSE('1/2') });
  const { code, out, err } = gitWithPlica(repository, ['diff'], {
    folder: 'cards',
    env: { GIT_EXTERNAL_DIFF: 'plica git-diff --' },
  });
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toMatch(/^shared: style house/m);
  expect(out).toMatch(/reaches moon, tide/i);
  expect(out).toMatch(/ease.* 1\/4 → 1\/2 .*cards\/house\.plica:4/);
  expect(out).toMatch(/^moon: recut/m);
  expect(out).toMatch(/^tide: recut/m);
  expect(out).not.toMatch(/^far:/m);
});

test('a file of styles alone is told by its name when it is new, or gone', () => {
  const repository = scratchRepository();
  repository.commit('A style', { 'house.plica': HOUSE('1/4') });
  repository.put({ 'house.plica': null });
  expect(withPlica(repository, 'diff')).toEqual({
    code: 0,
    out: expect.stringContaining('plica diff house.plica\n\n'),
    err: '',
  });
});

test('what cannot be read is said in the place of the change', () => {
  const repository = scratchRepository();
  repository.commit('Cards', { 'slips.plica': SOUND, 'bytes.plica': Uint8Array.of(0xff, 0) });
  repository.put({
    'slips.plica': 'units in\nenvelope half-letter { card: }\n',
    'bytes.plica': Uint8Array.of(0xff, 1),
  });
  const { code, out, err } = withPlica(repository, 'diff');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toContain('plica diff bytes.plica\n\nplica: before: bytes.plica: line 1 is not UTF-8');
  expect(out).toContain('error[syntax]');
  expect(out).toContain('half-letter: cannot be read');
});

test('what is no recipe, a link, a conflict: a line for each', () => {
  const repository = scratchRepository();
  repository.commit('All sorts', {
    'README.md': 'Tides.\n',
    'tide.plica': SOUND,
    'a.plica': SOUND.replace('half-letter', 'a'),
  });
  symlinkSync('tide.plica', join(repository.top, 'link.plica'));
  repository.put({ 'README.md': 'Tides and moons.\n' });
  repository.git('add', '--all');
  const { out } = withPlica(repository, 'diff', '--cached');
  expect(out).toContain(
    'plica diff README.md\n\nplica: README.md: it is no recipe; `git diff --no-ext-diff` shows it\n',
  );
  expect(out).toContain('plica diff link.plica\n\nplica: link.plica: it is a link or a submodule\n');
  repository.commit('A link');
  repository.git('branch', 'other');
  repository.commit('Ours', { 'tide.plica': narrower(SOUND) });
  repository.git('checkout', '--quiet', 'other');
  repository.commit('Theirs', { 'tide.plica': SOUND.replace('8 1/2', '9') });
  expect(() => repository.git('merge', '--quiet', 'main')).toThrow();
  expect(withPlica(repository, 'diff', '--cached')).toEqual({
    code: 0,
    err: '',
    out: 'tide.plica: a merge left conflicts in it; settle them first\n',
  });
});

test('names that look like something else are only names', () => {
  const repository = scratchRepository();
  const names = ['-f.plica', '--help.plica', "o'clock $(touch x) `y`.plica", 'two\n"lines".plica'];
  const all = (change: (text: string) => string) =>
    Object.fromEntries(
      names.map((name, index) => [name, change(SOUND).replace('half-letter', `n-${index}`)]),
    );
  repository.commit(
    'Cards',
    all((text) => text),
  );
  repository.put(all(narrower));
  const { code, out, err } = withPlica(repository, 'diff');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  for (const [index, name] of names.entries())
    expect(out).toContain(`plica diff ${name.replace('\n', ' ')}\n\nn-${index}: recut`);
  expect(repository.git('status', '--porcelain', '--untracked-files')).not.toContain('?? x');
});

test('git-setup --external makes it the way of git diff, and leaves git log -p its lines', () => {
  const repository = scratchRepository();
  gitWithPlica(repository, ['-c', 'alias.run=!plica git-setup --external --apply', 'run']);
  repository.commit('A card', { 'tide.plica': SOUND, 'README.md': 'Tides.\n' });
  repository.put({ 'tide.plica': narrower(SOUND), 'README.md': 'Tides and moons.\n' });
  const { out } = gitWithPlica(repository, ['diff']);
  expect(out).toMatch(/^plica diff tide\.plica\n\nhalf-letter: recut/m);
  expect(out).toContain('+Tides and moons.');
  expect(gitWithPlica(repository, ['diff', '--no-ext-diff']).out).toContain(
    '-# half-letter: blank 11 1/4 in',
  );
  expect(gitWithPlica(repository, ['log', '-p']).out).toContain('+# half-letter: blank 11 1/4 in');
});

test('colour where it is asked for', () => {
  const repository = scratchRepository();
  repository.commit('A card', { 'tide.plica': SOUND });
  repository.put({ 'tide.plica': narrower(SOUND) });
  const { out } = gitWithPlica(repository, ['diff'], {
    env: { GIT_EXTERNAL_DIFF: 'plica git-diff --color always --' },
  });
  expect(out).toContain('\u001b[1mplica diff tide.plica\u001b[');
});

test('without git, both states are compared all the same; with too few arguments, it is said', async () => {
  const files = { 'old.plica': SOUND, 'tide.plica': narrower(SOUND) };
  const same = await plica('git-diff tide.plica old.plica 0 100644 tide.plica 0 100644', { files });
  expect(same).toMatchObject({ code: 0, err: '', out: expect.stringContaining('half-letter: recut') });
  const short = await plicaIn(scratchRepository(), ['git-diff', 'a.plica', 'b.plica']);
  expect(short).toEqual({
    code: 2,
    out: '',
    err: 'plica: git hands over 7 arguments, or 9 where a file was renamed\n',
  });
});
