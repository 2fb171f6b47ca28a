import { expect, test } from 'vitest';
import { GAPING, plica, SOUND, TIGHT } from '../support/command-line.js';

test('a sound recipe: one line, exit 0, nothing on standard error', async () => {
  const { code, out, err } = await plica('check tides.plica', { files: { 'tides.plica': SOUND } });
  expect({ code, out, err }).toEqual({ code: 0, out: 'nothing wrong in 1 envelope of 1 file\n', err: '' });
});

test('an error: the findings on standard output, exit 1', async () => {
  const { code, out, err } = await plica('check gaping.plica', { files: { 'gaping.plica': GAPING } });
  expect(code).toBe(1);
  expect(out).toContain('error[creases-cross]');
  expect(out).toContain('gaping.plica:5:');
  expect(out).toMatch(/\n1 error\n$/);
  expect(err).toBe('');
});

test('a warning passes, and fails when checked strictly', async () => {
  const files = { 'snug.plica': TIGHT };
  expect(await plica('check snug.plica', { files })).toMatchObject({ code: 0 });
  const { code, out } = await plica('check snug.plica --strict', { files });
  expect(code).toBe(1);
  expect(out).toContain('warning[tight]');
});

test('a folder is searched in order of name; hidden folders and node_modules are passed over', async () => {
  const files = {
    'b.plica': GAPING.replace('gaping', 'second'),
    'a/z.plica': GAPING.replace('gaping', 'first'),
    '.git/c.plica': '?',
    'node_modules/d.plica': '?',
    'notes.txt': '?',
  };
  const { code, out } = await plica('check --format line', { files });
  expect(code).toBe(1);
  expect(out.split('\n').map((line) => line.split(': ').slice(0, 3).join(' '))).toEqual([
    'a/z.plica:5:10 error creases-cross',
    'b.plica:5:10 error creases-cross',
    '',
  ]);
});

test('a file that is given twice, by itself and with its folder, is one file', async () => {
  const { code, out } = await plica('check a a/tides.plica ./a', { files: { 'a/tides.plica': SOUND } });
  expect(code).toBe(0);
  expect(out).toBe('nothing wrong in 1 envelope of 1 file\n');
});

test('standard input is read for `-`, and uses files of the working folder', async () => {
  const input = 'units in\nuse "house.plica"\nenvelope tides like house { card: A6 }\n';
  const files = { 'house.plica': 'units in\nstyle house { step: 1/16 }\n' };
  expect(await plica('check -', { input, files })).toMatchObject({ code: 0 });
  const { out } = await plica('check - --format line', { input: 'envelope x-tides {\n', files });
  expect(out).toMatch(/^<stdin>:1:/);
});

test('json: the findings and nothing else', async () => {
  const { code, out, err } = await plica('check --format json .', { files: { 'gaping.plica': GAPING } });
  expect(code).toBe(1);
  expect(err).toBe('');
  expect(JSON.parse(out)).toMatchObject({
    format: 'plica-findings',
    version: 1,
    findings: [{ rule: 'creases-cross', severity: 'error', file: 'gaping.plica', line: 5, column: 10 }],
  });
});

test('what is used never leaves the project: the folder given, or the nearest with a .git', async () => {
  const files = { 'specs/tides.plica': 'use "../papers.plica"\n', 'papers.plica': '' };
  const { code, out } = await plica('check specs', { files });
  expect(code).toBe(1);
  expect(out).toContain('error[outside-root]');
  expect(await plica('check specs', { files: { ...files, '.git': 'gitdir: elsewhere' } })).toMatchObject({
    code: 0,
  });
  expect(
    await plica('check specs/tides.plica', { files: { ...files, 'catalogue.plica': '' } }),
  ).toMatchObject({ code: 0 });
});

test('files used by two others are named by the way they were reached', async () => {
  const files = {
    'specs/a.plica': 'use "papers/kraft.plica"\n',
    'specs/papers/kraft.plica': 'paper kraft { shade: brown }\n',
  };
  const { out } = await plica('check specs/a.plica --format line', { files });
  expect(out).toMatch(/^specs\/papers\/kraft\.plica:1:15: /);
});
