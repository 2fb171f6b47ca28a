import { expect, test } from 'vitest';
import { findRecipes } from '../../src/host/find-recipes.js';
import type { Host } from '../../src/host/host.js';
import { indexView } from '../../src/host/index-view.js';
import { nodeHost } from '../../src/host/node-host.js';
import { compiledAt, textAt } from '../support/read-at.js';
import { scratchRepository } from '../support/repository.js';

/** The machine with what is staged, which must be readable. */
function staged(host: Host): Host {
  const seen = indexView(host);
  if (seen.kind === 'trouble') throw new Error(seen.reason);
  return seen.host;
}

test('what is staged is read, not what was committed, nor what lies about', () => {
  const repository = scratchRepository();
  const { put, git, host } = repository;
  repository.commit('One', { 'a.plica': 'one', 'gone.plica': 'one', 'deep/a b\n"c".plica': 'one' });
  put({ 'a.plica': 'two', 'new.plica': 'two', 'gone.plica': null });
  git('add', '--all');
  put({ 'a.plica': 'three', 'not-yet.plica': 'three', 'new.plica': null });
  for (const seen of [staged(host()), staged(host('deep'))]) {
    const { files } = findRecipes(seen, repository.top);
    const names = ['a.plica', 'deep/a b\n"c".plica', 'new.plica'].map((path) => `${repository.top}/${path}`);
    expect(files).toEqual(names);
    expect(files.map((path) => textAt(seen, path))).toEqual(['two', 'one', 'two']);
  }
  expect(git('diff', '--name-only')).toBe('a.plica\nnew.plica');
});

test('before the first commit there is something staged, or nothing', () => {
  const repository = scratchRepository();
  expect(staged(repository.host()).list('.')).toEqual({ kind: 'entries', entries: [] });
  repository.put({ 'a.plica': 'units mm\n' });
  repository.git('add', '.');
  expect(textAt(staged(repository.host()), 'a.plica')).toBe('units mm\n');
});

test('a merge in progress: what it left with conflicts is named, the rest is read', async () => {
  const repository = scratchRepository();
  const { git, commit } = repository;
  commit('One', { 'a.plica': 'units mm\n', 'b.plica': 'units mm\n', 'c.plica': 'units mm\n', 'd.plica': '' });
  git('checkout', '--quiet', '-b', 'side');
  commit('Inches', { 'a.plica': 'units in\n', 'b.plica': null, 'd.plica': 'units mm\n' });
  git('checkout', '--quiet', 'main');
  commit('Points', { 'a.plica': 'units pt\n', 'b.plica': 'units mm\n\n' });
  expect(() => git('merge', '--quiet', 'side')).toThrow();
  const { names, troubles } = await compiledAt(staged(repository.host()));
  expect(names).toEqual(['c.plica', 'd.plica']);
  const CONFLICTS = 'a merge left conflicts in it; settle them first';
  expect(troubles).toEqual([`a.plica: ${CONFLICTS}`, `b.plica: ${CONFLICTS}`]);
  expect(textAt(staged(repository.host()), 'd.plica')).toBe('units mm\n');
});

test('another index that git names is the one that is read', () => {
  const repository = scratchRepository();
  repository.commit('One', { 'a.plica': 'one', 'b.plica': 'one' });
  repository.put({ 'a.plica': 'two', 'b.plica': 'two' });
  // As the hooks of `git commit a.plica` see it (git(1), `GIT_INDEX_FILE`).
  const { cwd, env } = repository.host();
  const other = { ...env, GIT_DIR: '.git', GIT_INDEX_FILE: '.git/other' };
  nodeHost(cwd, other).git(['read-tree', 'HEAD']);
  nodeHost(cwd, other).git(['update-index', 'a.plica']);
  repository.git('add', 'b.plica');
  const [seen, usual] = [staged(nodeHost(cwd, other)), staged(nodeHost(cwd, env))];
  expect(['a.plica', 'b.plica'].map((path) => textAt(seen, path))).toEqual(['two', 'one']);
  expect(['a.plica', 'b.plica'].map((path) => textAt(usual, path))).toEqual(['one', 'two']);
});

test('a bare repository has nothing staged', () => {
  const repository = scratchRepository('--bare');
  expect(indexView(repository.host())).toEqual({
    kind: 'trouble',
    reason: 'in a bare repository nothing can be staged',
  });
});
