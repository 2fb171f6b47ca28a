import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { findRecipes } from '../../src/host/find-recipes.js';
import type { Host } from '../../src/host/host.js';
import { findRepository } from '../../src/host/repository.js';
import { workTree } from '../../src/host/work-tree.js';
import { repositoryAt, type ScratchRepository, scratchRepository } from '../support/repository.js';

/** The recipes that a search finds in the work tree, from a folder of it. */
function found({ host }: ScratchRepository, folder = '.', path = '.'): readonly string[] {
  const machine: Host = host(folder);
  const repository = findRepository(machine);
  if (repository.kind === 'trouble') throw new Error(repository.reason);
  const tree = workTree(machine, repository);
  if (tree.kind === 'trouble') throw new Error(tree.reason);
  return findRecipes(tree.host, path).files;
}

const CARD = 'units mm\n\nenvelope tide-table { card: 105 x 148 }\n';

test('what is new counts, what is ignored does not, unless it was committed all the same', () => {
  const repository = scratchRepository();
  repository.commit('Kept', { 'kept.plica': CARD, 'deep/kept.plica': CARD });
  repository.put({
    '.gitignore': 'kept.plica\nproofs/\n*.draft.plica\n!fair.draft.plica\n',
    'new.plica': CARD,
    'moon.draft.plica': CARD,
    'fair.draft.plica': CARD,
    'proofs/moon.plica': CARD,
    'deep/proofs/a/moon.plica': CARD,
    'deep/.gitignore': 'new.plica\n',
    'deep/new.plica': CARD,
    'deep/naïve "draft".draft.plica': CARD,
  });
  expect(found(repository)).toEqual(['deep/kept.plica', 'fair.draft.plica', 'kept.plica', 'new.plica']);
  expect(found(repository, 'deep')).toEqual(['kept.plica']);
  expect(found(repository, 'deep', '..')).toHaveLength(4);
});

test('repositories inside are left out; a link into an ignored folder is one to nothing of ours', () => {
  const repository = scratchRepository();
  repository.commit('Ours', { 'ours.plica': CARD });
  const guest = scratchRepository();
  guest.commit('Theirs', { 'theirs.plica': CARD });
  repository.git('submodule', '--quiet', 'add', guest.top, 'guest');
  repository.put({ 'lodger/theirs.plica': CARD, '.gitignore': 'proofs/\n', 'proofs/moon.plica': CARD });
  repositoryAt(join(repository.top, 'lodger')).git('init', '--quiet');
  symlinkSync('proofs', join(repository.top, 'link'));
  expect(found(repository)).toEqual(['ours.plica']);
});

test('where everything is ignored, nothing is found', () => {
  const repository = scratchRepository();
  repository.put({ '.gitignore': '*\n', 'moon.plica': CARD, 'deep/moon.plica': CARD });
  expect(found(repository)).toEqual([]);
});
