import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { revisionViews } from '../../src/host/revision-views.js';
import { textAt } from '../support/read-at.js';
import { scratchRepository } from '../support/repository.js';

test('each commit is seen as it was, in whatever order they are asked for, however many', () => {
  const repository = scratchRepository();
  const hashes = Array.from({ length: 70 }, (_, number) =>
    repository.commit(`${number}`, { 'a.plica': `# ${number}\n`, 'notes.txt': 'no recipe' }),
  ).reverse();
  const views = revisionViews(repository.host(), repository.top, hashes);
  const read = (index: number): string | null => {
    const seen = views(hashes[index] as string);
    return seen.kind === 'view' ? textAt(seen.host, 'a.plica') : seen.reason;
  };
  const asked = [0, 1, 69, 2, 40, 33, 68, 0, 65];
  expect(asked.map(read)).toEqual(asked.map((index) => `# ${69 - index}\n`));
});

test('a content that two commits have is one, and is handed out once', () => {
  const repository = scratchRepository();
  const first = repository.commit('One', { 'a.plica': 'units mm\n' });
  const second = repository.commit('Two', { 'b.plica': 'units in\n' });
  const views = revisionViews(repository.host(), repository.top, [second, first]);
  const [one, other] = [second, first].map((hash) => {
    const seen = views(hash);
    const read = seen.kind === 'view' ? seen.host.read('a.plica', 100) : null;
    return read?.kind === 'bytes' ? read.bytes : null;
  });
  expect(one).toBeInstanceOf(Uint8Array);
  expect(one).toBe(other);
});

test('a link leads to what is no recipe by its name', () => {
  const repository = scratchRepository();
  repository.put({ 'house.txt': 'units in\n' });
  symlinkSync('house.txt', join(repository.top, 'house.plica'));
  const hash = repository.commit('Linked');
  const seen = revisionViews(repository.host(), repository.top, [hash])(hash);
  expect(seen.kind === 'view' && textAt(seen.host, 'house.plica')).toBe('units in\n');
});

test('a commit that is not there is said, and the others are seen', () => {
  const repository = scratchRepository();
  const hash = repository.commit('One', { 'a.plica': 'units mm\n' });
  const gone = '1'.repeat(40);
  const views = revisionViews(repository.host(), repository.top, [gone, hash]);
  expect(views(gone)).toEqual({ kind: 'trouble', reason: expect.stringMatching(/^git: /) });
  expect(views(hash)).toMatchObject({ kind: 'view' });
});
