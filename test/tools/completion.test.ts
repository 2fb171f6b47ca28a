import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { plica } from '../support/command-line.js';
import { scratch } from '../support/scratch.js';

/** A folder with a recipe, and the shell's script as it is printed. */
async function folderWith(shell: string): Promise<string> {
  const folder = scratch({ 'ebb.plica': '', 'ebb.txt': '' });
  writeFileSync(join(folder, 'script'), (await plica(`completion ${shell}`)).out);
  return folder;
}

test('fish reads the script, and offers commands, choices, rules and recipes', {
  timeout: 60_000,
}, async () => {
  const cwd = await folderWith('fish');
  expect(spawnSync('fish', ['-n', 'script'], { cwd, encoding: 'utf8' })).toMatchObject({
    status: 0,
    stderr: '',
  });
  const offered = (line: string): readonly string[] => {
    const ask = ['--no-config', '-c', `source script; complete -C ${JSON.stringify(line)}`];
    const { stdout } = spawnSync('fish', ask, { cwd, encoding: 'utf8' });
    return stdout.split('\n').flatMap((each) => each.split('\t')[0] || []);
  };
  expect(offered('plica ch')).toEqual(['check']);
  expect(offered('plica check --format j')).toEqual(['json']);
  expect(offered('plica explain creases')).toEqual(['creases-cross']);
  expect(offered('plica check eb')).toContain('ebb.plica');
  expect(offered('plica help wa')).toEqual(['watch']);
});

test('zsh reads the script, and offers commands, choices, rules and recipes', {
  timeout: 60_000,
}, async () => {
  const cwd = await folderWith('zsh');
  expect(spawnSync('zsh', ['-n', 'script'], { cwd, encoding: 'utf8' })).toMatchObject({
    status: 0,
    stderr: '',
  });
  // A shell in a terminal of its own, in which the line is typed and Tab pressed; the line that stands then is printed.
  const completed = (line: string): string => {
    const ask = `
      zmodload zsh/zpty
      zpty shell 'zsh -f -i'
      zpty -w shell 'PROMPT=; autoload -Uz compinit; compinit -u -D; source ./script; zle -N tell; tell() { print -r -- "<$BUFFER>"; exit }; bindkey "^X" tell'
      zpty -w -n shell $'${line}\\t\\C-x'
      local text all=
      while zpty -r shell text; do all+=$text; done
      print -r -- $all`;
    const { stdout } = spawnSync('zsh', ['-f', '-c', ask], { cwd, encoding: 'utf8' });
    return /<(plica [^>]*)>/.exec(stdout)?.[1]?.trim() ?? stdout;
  };
  expect(completed('plica che')).toBe('plica check');
  expect(completed('plica check --format j')).toBe('plica check --format json');
  expect(completed('plica explain creases')).toBe('plica explain creases-cross');
  expect(completed('plica check eb')).toBe('plica check ebb.plica');
});
