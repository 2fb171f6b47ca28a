import { lstatSync, readdirSync, realpathSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { compileFiles } from '../../src/cli/compile-inputs.js';
import { readInputs } from '../../src/cli/inputs.js';
import type { Host } from '../../src/host/host.js';
import { indexView } from '../../src/host/index-view.js';
import { nodeHost } from '../../src/host/node-host.js';
import { revisionView } from '../../src/host/revision-view.js';
import { repositoryAt, type ScratchRepository, scratchRepository } from '../support/repository.js';
import { scratch } from '../support/scratch.js';

const MOST = 1_000_000;

/** The machine at a revision, which must be there. */
function at(host: Host, revision: string): Host {
  const seen = revisionView(host, revision);
  if (seen.kind === 'trouble') throw new Error(seen.reason);
  return seen.host;
}

function staged(host: Host): Host {
  const seen = indexView(host);
  if (seen.kind === 'trouble') throw new Error(seen.reason);
  return seen.host;
}

/** The text of a file, or why there is none. */
function text(host: Host, path: string): string {
  const read = host.read(path, MOST);
  if (read.kind === 'too-large') return `${read.bytes} bytes`;
  return read.kind === 'bytes' ? Buffer.from(read.bytes).toString('utf8') : read.reason;
}

/** What a command would make of paths: every fact and finding, and what could not be read. */
async function compiled(host: Host, ...paths: readonly string[]) {
  const { files, limits, troubles } = await readInputs(host, paths);
  const { recipes, diagnostics } = compileFiles(files, host);
  return { names: files.map(({ input }) => input.source.name), limits, troubles, recipes, diagnostics };
}

/** Everything in a work tree and when it was last changed, and what git says of it. */
function stateOf({ top, git }: ScratchRepository) {
  const paths = readdirSync(top, { recursive: true, encoding: 'utf8' }).filter(
    (path) => !/^\.git\b/.test(path),
  );
  const times = paths.map((path) => [path, lstatSync(join(top, path)).mtimeMs]);
  return { times, index: lstatSync(join(top, '.git/index')).mtimeMs, status: git('status', '--porcelain') };
}

const STYLE = (ease: number): string => `units mm\n\nstyle loose { ease: ${ease} }\n`;
const CARD = 'units mm\n\nuse "shared/loose.plica"\n\nenvelope tide-table like loose { card: 105 x 148 }\n';

test('a recipe is read with the style it used then, though both are gone or changed since', async () => {
  const repository = scratchRepository();
  repository.commit('Two', { 'tide.plica': CARD, 'shared/loose.plica': STYLE(4) });
  repository.commit('Wider', { 'shared/loose.plica': STYLE(6) });
  repository.commit('Gone', { 'tide.plica': null, 'shared/loose.plica': null, 'other.plica': 'units mm\n' });
  repository.put({ 'other.plica': 'units in\n', 'shared/loose.plica': 'nonsense {' });
  const before = stateOf(repository);
  const host = repository.host();
  const then = await compiled(at(host, 'HEAD~2'), 'tide.plica');
  expect(then).toMatchObject({ names: ['tide.plica'], troubles: [], diagnostics: [] });
  const ease = (found: typeof then) => found.recipes[0]?.envelope.ease.value.width;
  expect(ease(then)).toBe(4);
  expect(ease(await compiled(at(host, 'HEAD~1'), 'tide.plica'))).toBe(6);
  expect((await compiled(at(host, 'HEAD'), 'tide.plica')).troubles).toEqual([
    expect.stringMatching(/^tide\.plica: there is no such file or folder/),
  ]);
  expect(stateOf(repository)).toEqual(before);
});

void [realpathSync, symlinkSync, nodeHost, repositoryAt, scratch, staged, text];
