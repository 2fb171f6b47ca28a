import { createHash } from 'node:crypto';
import { chmodSync, existsSync, mkdirSync, realpathSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { history } from '../../src/host/history.js';
import { indexView } from '../../src/host/index-view.js';
import { nodeHost } from '../../src/host/node-host.js';
import { findRepository, resolveCommit } from '../../src/host/repository.js';
import { revisionView } from '../../src/host/revision-view.js';
import { filesOfCommit } from '../../src/host/tracked.js';
import { repositoryAt, scratchRepository } from '../support/repository.js';
import { scratch } from '../support/scratch.js';

const trouble = (reason: string) => ({ kind: 'trouble', reason });

test('the repository is found from its top, from below, from a work tree of its own, and through a link', () => {
  const repository = scratchRepository();
  repository.commit('One', { 'deep/a.plica': '' });
  const found = { kind: 'repository', top: repository.top, isBare: false };
  expect(findRepository(repository.host())).toEqual(found);
  expect(findRepository(repository.host('deep'))).toEqual(found);
  const link = join(scratch(), 'link');
  symlinkSync(repository.top, link);
  expect(findRepository({ ...repository.host(), cwd: link })).toEqual(found);
  const second = join(scratch(), 'second\ntree');
  repository.git('worktree', 'add', '--quiet', '--detach', second);
  expect(findRepository(repositoryAt(second).host('deep'))).toEqual({ ...found, top: second });
});

test('where there is none, or no place to look from, that is said', () => {
  const repository = scratchRepository();
  const none = repositoryAt(scratch()).host();
  expect(findRepository(none)).toEqual(trouble('this folder is in no git repository'));
  expect(findRepository(repository.host('.git'))).toEqual(
    trouble('this is git’s own folder; go to the folder with the recipes'),
  );
  const others = repository.host();
  const env = { ...others.env, GIT_TEST_ASSUME_DIFFERENT_OWNER: '1' };
  expect(findRepository(nodeHost(others.cwd, env))).toEqual(
    trouble(`git: detected dubious ownership in repository at '${repository.top}'`),
  );
});

test('a bare repository is one, and so is a folder in it', () => {
  const repository = scratchRepository('--bare');
  mkdirSync(join(repository.top, 'refs/more'));
  for (const folder of ['.', 'refs/more']) {
    const host = repository.host(folder);
    expect(findRepository(host)).toEqual({ kind: 'repository', top: host.cwd, isBare: true });
  }
});

test('a revision is named in any of git’s ways', () => {
  const repository = scratchRepository();
  const { git, commit, host } = repository;
  const [first, second] = [commit('Flap for the tide table'), commit('Second')];
  git('tag', '-a', '-m', 'a note', 'sent-to-press', first);
  git('branch', 'große Flut'.replace(' ', '-'), first);
  const names = {
    HEAD: second,
    '@': second,
    'HEAD~1': first,
    'HEAD^': first,
    'HEAD@{0}': second,
    'HEAD@{1}': first,
    main: second,
    'refs/heads/main': second,
    'sent-to-press': first,
    'große-Flut': first,
    ':/tide table': first,
    [first]: first,
    [first.slice(0, 12)]: first,
  };
  const found = Object.keys(names).map((name) => [name, resolveCommit(host(), name)]);
  expect(Object.fromEntries(found)).toEqual(
    Object.fromEntries(Object.entries(names).map(([name, hash]) => [name, { kind: 'commit', hash }])),
  );
  git('checkout', '--quiet', '--detach', first);
  expect(resolveCommit(host(), 'HEAD')).toEqual({ kind: 'commit', hash: first });
});

test.each([
  'nothing',
  'HEAD~7',
  'HEAD@{7}',
  'a.plica',
  '',
  ' ',
  'HEAD..HEAD',
  '^HEAD',
  '-',
  '--help',
  '--all',
  '--git-dir',
  '--output=stolen',
  '-h',
  '$(touch stolen)',
  '; touch stolen',
  '`touch stolen`',
  'a\nb',
  'HEAD HEAD',
])('%j is no revision, and nothing else', (name) => {
  const repository = scratchRepository();
  repository.commit('One', { 'a.plica': 'units mm\n' });
  const shown = name.replace('\n', ' ');
  expect(resolveCommit(repository.host(), name)).toEqual(trouble(`\`${shown}\`: there is no such revision`));
  expect(repository.git('status', '--porcelain')).toBe('');
});

test('what a name leads to must be a commit that is there, and one only', () => {
  const repository = scratchRepository();
  repository.commit('One', { 'a.plica': 'units mm\n' });
  const resolved = (name: string) => resolveCommit(repository.host(), name);
  const blob = repository.git('rev-parse', 'HEAD:a.plica');
  expect(resolved(blob)).toEqual(trouble(`\`${blob}\`: it is a blob, no commit`));
  expect(resolved('HEAD:a.plica')).toEqual(trouble('`HEAD:a.plica`: it is a blob, no commit'));
  expect(resolved('HEAD:')).toEqual(trouble('`HEAD:`: it is a tree, no commit'));
  const unknown = '1'.repeat(40);
  expect(resolved(unknown)).toEqual(trouble(`\`${unknown}\`: there is no such commit`));
  expect(resolved('\u001b[2J')).toEqual(trouble('`\\u{1b}[2J`: there is no such revision'));
  expect(resolved('a\0b')).toEqual(trouble('a name with a NUL character in it cannot be given to git'));
});

test('a short hash that several things share is refused', () => {
  const repository = scratchRepository();
  // A file's hash is the SHA-1 of `blob`, its size, a NUL character and its content: gitformat-loose(5), hash-object(1).
  const starts = new Map<string, string>();
  for (let number = 0; ; number++) {
    const content = `${number}`;
    const start = createHash('sha1').update(`blob ${content.length}\0${content}`).digest('hex').slice(0, 4);
    const other = starts.get(start);
    starts.set(start, content);
    if (other === undefined) continue;
    repository.commit('Two that begin alike', { a: content, b: other });
    expect(resolveCommit(repository.host(), start)).toEqual(
      trouble(`\`${start}\`: several things are named so; write more of it`),
    );
    return;
  }
});

test('where nothing is committed yet, or no more is here, that is said', () => {
  const repository = scratchRepository();
  expect(resolveCommit(repository.host(), 'HEAD')).toEqual(trouble('nothing has been committed here yet'));
  repository.commit('One');
  repository.commit('Two');
  const clone = join(scratch(), 'clone');
  repository.git('clone', '--quiet', '--depth=1', `file://${repository.top}`, clone);
  expect(resolveCommit(repositoryAt(clone).host(), 'HEAD~1')).toEqual(
    trouble(
      '`HEAD~1`: there is no such revision; this clone is shallow, so older commits are missing (`git fetch --unshallow`)',
    ),
  );
});

test('a repository with longer hashes is one like any other', () => {
  const repository = scratchRepository('--object-format=sha256');
  const hash = repository.commit('One', { 'a.plica': 'units mm\n' });
  expect(hash).toHaveLength(64);
  expect(resolveCommit(repository.host(), 'HEAD')).toEqual({ kind: 'commit', hash });
  expect(filesOfCommit(repository.host(), hash)).toMatchObject([{ path: 'a.plica', kind: 'file' }]);
});

test('git that is not there, or cannot be run, or is killed, is said', () => {
  const { top } = scratchRepository();
  const folder = scratch({ git: 'no program' });
  const found = (env: Readonly<Record<string, string>>) => findRepository(nodeHost(top, env));
  expect(found({ PATH: '/nowhere' })).toEqual(trouble('git is not installed, or not on the PATH'));
  expect(found({ PATH: folder })).toMatchObject({ reason: expect.stringMatching(/^git could not be run: /) });
  const killed = scratch({ git: '#!/bin/sh\nkill -KILL $$\n' });
  chmodSync(join(killed, 'git'), 0o755);
  expect(found({ PATH: killed })).toEqual(trouble('git was stopped (SIGKILL)'));
  const endless = scratch({ git: '#!/bin/sh\nexec yes\n' });
  chmodSync(join(endless, 'git'), 0o755);
  expect(found({ PATH: `${endless}:/bin:/usr/bin` })).toEqual(
    trouble('git wrote more than plica takes (256 MiB)'),
  );
});

test('no program that a repository names is started, and the network is left alone', () => {
  const origin = scratchRepository();
  origin.git('config', 'uploadpack.allowFilter', 'true');
  origin.commit('One', { 'a.plica': 'units mm\n', '.gitattributes': '*.plica filter=odd diff=odd\n' });
  origin.commit('Two', { 'a.plica': 'units in\n' });
  const top = realpathSync(scratch());
  origin.git('clone', '--quiet', '--filter=blob:none', '--no-checkout', `file://${origin.top}`, top);
  const repository = repositoryAt(top);
  const [program, started] = [join(top, '.git/program'), join(top, '.git/started')];
  repository.put({ '.git/program': `#!/bin/sh\ntouch '${started}'\n` });
  chmodSync(program, 0o755);
  symlinkSync(program, join(top, '.git/hooks/post-index-change'));
  for (const name of [
    'core.fsmonitor',
    'core.pager',
    'pager.log',
    'gpg.program',
    'diff.external',
    'diff.odd.command',
    'diff.odd.textconv',
    'filter.odd.smudge',
    'filter.odd.clean',
    'core.sshCommand',
    'remote.origin.uploadpack',
    'core.askPass',
    'core.editor',
  ])
    repository.git('config', name, program);
  repository.git('config', 'log.showSignature', 'true');
  for (const seen of [revisionView(repository.host(), 'HEAD'), indexView(repository.host())]) {
    if (seen.kind === 'trouble') throw new Error(seen.reason);
    expect(seen.host.read('a.plica', 1000)).toMatchObject({ kind: 'unreadable' });
  }
  expect(history(repository.host(), 'a.plica')).toMatchObject({
    steps: [{ subject: 'Two' }, { subject: 'One' }],
  });
  expect(existsSync(started)).toBe(false);
});
