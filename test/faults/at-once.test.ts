/* Several programs at the same files at once: an editor that saves while Plica reads, two builds into one folder. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { scratch } from '../support/scratch.js';
import { GAPING, recipeOf, SOUND } from './recipes.js';
import { filesIn, plica, running } from './run-built.js';

test('a recipe that is saved over and over: what is said is of one version or of the other', async () => {
  const folder = scratch({ 'sound.txt': SOUND, 'gaping.txt': GAPING, 'a.plica': SOUND });
  const said = [SOUND, GAPING].map((text) => plica(scratch({ 'a.plica': text }), 'check', 'a.plica'));
  const saver = spawn(
    'bash',
    ['-c', 'while :; do for each in sound gaping; do cp $each.txt saved && mv saved a.plica; done; done'],
    { cwd: folder, stdio: 'ignore' },
  );
  onTestFinished(() => {
    saver.kill('SIGKILL');
  });
  for (let time = 0; time < 20; time++) expect(said).toContainEqual(plica(folder, 'check', 'a.plica'));
  expect(saver.exitCode).toBe(null);
});

test('a recipe that comes and goes: it is checked, or it is said that it is not there', async () => {
  const folder = scratch({ 'specs/a.plica': SOUND, 'b.txt': recipeOf('ebb') });
  const mover = spawn('bash', ['-c', 'while :; do cp b.txt specs/b.plica; rm specs/b.plica; done'], {
    cwd: folder,
    stdio: 'ignore',
  });
  onTestFinished(() => {
    mover.kill('SIGKILL');
  });
  for (let time = 0; time < 10; time++) {
    const { code, out, err } = plica(folder, 'check', 'specs', '--format', 'line');
    expect(out).toBe('');
    // It can go between being found and being read.
    const gone = 'plica: specs/b.plica: there is no such file or folder\n';
    expect([
      { code: 0, err: '' },
      { code: 2, err: gone },
    ]).toContainEqual({ code, err });
  }
});

const MANY = recipeOf('ebb', 'flood', 'slack');

test('three builds into one folder at once: every file is whole', async () => {
  const folder = scratch({ 'specs/tides.plica': MANY });
  const build = (out: string) =>
    running(folder, 'build', 'specs', '--emit', 'svg,dxf,template', '--out', out);
  expect(await build('alone')).toMatchObject({ code: 0 });
  const all = await Promise.all([build('out'), build('out'), build('out')]);
  for (const ran of all) expect(ran).toMatchObject({ code: 0, out: '' });
  expect(filesIn(join(folder, 'out'))).toEqual(filesIn(join(folder, 'alone')));
});

test('three catalogues to one file at once: it is whole, and nothing is left beside it', async () => {
  const folder = scratch({ 'specs/tides.plica': MANY });
  const write = (out: string) => running(folder, 'catalogue', 'specs', '--out', out);
  expect(await write('alone/tides.pdf')).toMatchObject({ code: 0 });
  const all = await Promise.all([1, 2, 3].map(() => write('out/tides.pdf')));
  for (const ran of all) expect(ran).toMatchObject({ code: 0, out: '' });
  expect(filesIn(join(folder, 'out'))).toEqual(filesIn(join(folder, 'alone')));
});
