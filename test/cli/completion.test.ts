import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { plica } from '../support/command-line.js';
import { scratch } from '../support/scratch.js';

/** What bash offers for the last of some words, in a folder with two recipes, a folder and a file of another kind. */
async function offered(...words: readonly string[]): Promise<readonly string[]> {
  const folder = scratch({ 'ebb.plica': '', 'cards/flood.plica': '', 'ebb.txt': '', 'the moon.plica': '' });
  writeFileSync(join(folder, 'script'), (await plica('completion bash')).out);
  const ask = `source ./script; COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _plica; printf '%s\\n' "\${COMPREPLY[@]}"`;
  const { stdout, stderr } = spawnSync('bash', ['--norc', '-c', ask, 'bash', 'plica', ...words], {
    cwd: folder,
    encoding: 'utf8',
  });
  expect(stderr).toBe('');
  return stdout.split('\n').filter((line) => line !== '');
}

test('bash completes commands, options, their choices, rules, and recipes', async () => {
  expect(await offered('ch')).toEqual(['check']);
  expect(await offered('')).toEqual(expect.arrayContaining(['check', 'watch', 'new', 'help', '--version']));
  expect(await offered('check', '--fo')).toEqual(['--format']);
  expect(await offered('check', '--format', 'j')).toEqual(['json']);
  expect(await offered('build', '--page', 'a')).toEqual(['a4', 'a3']);
  expect(await offered('explain', 'creases')).toEqual(['creases-cross']);
  expect(await offered('help', 'wa')).toEqual(['watch']);
  expect(await offered('check', 'e')).toEqual(['ebb.plica']);
  expect(await offered('check', '')).toEqual(['cards', 'ebb.plica', 'the moon.plica']);
  expect(await offered('check', 'cards/')).toEqual(['cards/flood.plica']);
  expect(await offered('completion', '')).toEqual(['bash', 'zsh', 'fish']);
});

test.each(['bash', 'zsh', 'fish'])(
  'the script for %s says how it is installed, as the help does',
  async (shell) => {
    const { code, out } = await plica(`completion ${shell}`);
    const [, way = ''] = /To install: (.*)\n/.exec(out) ?? [];
    expect(code).toBe(0);
    expect(way).toContain(`plica completion ${shell} > `);
    expect((await plica('completion --help')).out).toContain(way);
  },
);

test('another shell is refused', async () => {
  expect(await plica('completion fsh')).toMatchObject({
    code: 2,
    err: 'plica: there is no script for `fsh`, only for bash, zsh and fish; did you mean `fish` or `zsh`?\n',
  });
});
