import { lstatSync, readdirSync, realpathSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { findRecipes } from '../../src/host/find-recipes.js';
import type { Entry, Host } from '../../src/host/host.js';
import { projectRoot } from '../../src/host/project-root.js';
import { revisionView } from '../../src/host/revision-view.js';
import { compiledAt, textAt } from '../support/read-at.js';
import { repositoryAt, type ScratchRepository, scratchRepository } from '../support/repository.js';
import { scratch } from '../support/scratch.js';

const MISSING = 'there is no such file or folder';

/** The machine at a revision, which must be there. */
function at(host: Host, revision: string): Host {
  const seen = revisionView(host, revision);
  if (seen.kind === 'trouble') throw new Error(seen.reason);
  return seen.host;
}

/** Everything in a work tree and when it was last changed, and what git says of it. */
function stateOf({ top, git }: ScratchRepository) {
  const paths = readdirSync(top, { recursive: true, encoding: 'utf8' }).filter(
    (path) => !/^\.git\b/.test(path),
  );
  const status = git('--no-optional-locks', 'status', '--porcelain');
  const times = ['.git/index', ...paths].map((path) => [path, lstatSync(join(top, path)).mtimeMs]);
  return { status, times };
}

/** What lies at the top, but for git's own folder. */
function entriesOf(host: Host): readonly Entry[] {
  const listing = host.list('.');
  return listing.kind === 'entries' ? listing.entries.filter(({ name }) => name !== '.git') : [];
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
  const then = await compiledAt(at(host, 'HEAD~2'), 'tide.plica');
  expect(then).toMatchObject({ names: ['tide.plica'], troubles: [], diagnostics: [] });
  const ease = (found: typeof then) => found.recipes[0]?.envelope.ease.value.width;
  expect(ease(then)).toBe(4);
  expect(ease(await compiledAt(at(host, 'HEAD~1'), 'tide.plica'))).toBe(6);
  expect((await compiledAt(at(host, 'HEAD'), 'tide.plica')).troubles).toEqual([`tide.plica: ${MISSING}`]);
  expect(stateOf(repository)).toEqual(before);
});

test('what comes of a revision is what comes of it checked out, from every folder', async () => {
  const repository = scratchRepository();
  const { top, git, host } = repository;
  repository.put({
    'tide.plica': CARD,
    'shared/loose.plica': STYLE(4),
    'shared/deep/a.plica': 'use "../loose.plica"\nuse "../../../outside.plica"\nuse "nothing.plica"\n',
    'shared/long.plica': `# ${'.'.repeat(1_000_000)}`,
    'shared/picture.plica': new Uint8Array([0x89, 0x50, 0xff, 0x00, 0x0a]),
    'shared/wide.plica': Buffer.from('\ufeffunits mm\n', 'utf16le'),
    'slips.plica': 'envelope half { card 5 }\n',
    '.hidden/b.plica': CARD,
    'node_modules/c.plica': CARD,
  });
  symlinkSync('shared/deep', join(top, 'linked'));
  symlinkSync('../tide.plica', join(top, 'shared/tide-again.plica'));
  symlinkSync('linked/../loose.plica', join(top, 'by-way.plica'));
  symlinkSync('round.plica', join(top, 'round.plica'));
  symlinkSync('nowhere', join(top, 'dangling.plica'));
  symlinkSync(join(top, 'tide.plica'), join(top, 'absolute.plica'));
  symlinkSync('tide.plica/../slips.plica', join(top, 'through-a-file.plica'));
  const hash = repository.commit('All');
  const questions = [
    [],
    ['.'],
    ['linked'],
    ['shared/tide-again.plica'],
    ['nothing'],
    ['tide'],
    ['.hidden'],
    ['a\nb'],
    ['round.plica'],
  ];
  const asked = async (from: Host) => Promise.all(questions.map((paths) => compiledAt(from, ...paths)));
  const onDisk = [await asked(host()), await asked(host('shared/deep'))];
  expect(onDisk[0]?.[0]).toMatchObject({
    troubles: { length: 2 },
    limits: { length: 1 },
    recipes: { length: 1 },
  });
  expect(new Set(entriesOf(at(host(), hash)))).toEqual(new Set(entriesOf(host())));
  repository.commit('None', { 'tide.plica': null, 'slips.plica': null });
  git('rm', '-r', '--quiet', 'shared/deep', 'linked');
  repository.put({ 'shared/deep/x': '' });
  expect([await asked(at(host(), hash)), await asked(at(host('shared/deep'), hash))]).toEqual(onDisk);
});

test.each([
  'with spaces.plica',
  ' .plica',
  'line\nend.plica',
  'tab\t.plica',
  '"quoted".plica',
  'it’s.plica',
  "'.plica",
  '\\.plica',
  '--help.plica',
  '-/-.plica',
  ':(top)magic.plica',
  ':/a.plica',
  '*.plica',
  '!a.plica',
  'flut/Übergröße.plica',
  '潮汐/表.plica',
  'HEAD.plica',
  '$(touch stolen).plica',
])('a file named %j is read like any other', (name) => {
  const repository = scratchRepository();
  repository.commit('One', { [name]: 'units mm\n', 'other.plica': '' });
  repository.commit('Two', { [name]: null });
  const host = at(repository.host(), 'HEAD~1');
  expect(textAt(host, `./${name}`)).toBe('units mm\n');
  expect(textAt(host, join(repository.top, name))).toBe('units mm\n');
  expect(findRecipes(host, repository.top).files).toContain(join(repository.top, name));
  expect(host.realPath(`./${name}`)).toBe(join(repository.top, name));
  expect(textAt(at(repository.host(), 'HEAD'), `./${name}`)).toBe(MISSING);
});

test.runIf(process.platform === 'linux')('names that are no UTF-8 stay apart, and can be read', () => {
  const repository = scratchRepository();
  for (const byte of [0xe4, 0xf6]) {
    const name = Buffer.concat([
      Buffer.from(`${repository.top}/flut-`),
      Buffer.of(byte),
      Buffer.from('.plica'),
    ]);
    writeFileSync(name, `# ${byte}\n`);
  }
  repository.commit('One');
  const host = at(repository.host(), 'HEAD');
  const { files } = findRecipes(host, '.');
  expect(files).toEqual(['flut-\udce4.plica', 'flut-\udcf6.plica']);
  expect(files.map((path) => textAt(host, path))).toEqual(['# 228\n', '# 246\n']);
});

test('the top is the root of the project, and beyond it is nothing', () => {
  const repository = scratchRepository();
  const { top } = repository;
  repository.commit('One', { 'deep/a.plica': '', 'catalogue.plica': '', 'deep/catalogue.plica': '' });
  const host = at(repository.host('deep'), 'HEAD');
  expect(projectRoot(host, join(top, 'deep'), '/else')).toBe(top);
  expect(host.kind('../.git')).toBe('folder');
  expect(host.kind('a.plica/more')).toBe('missing');
  const outside = join(scratch({ 'b.plica': 'units mm\n' }), 'b.plica');
  for (const path of [outside, '/', '/etc/passwd', '../.git/config', '../../b.plica']) {
    expect([path, host.kind(path), host.realPath(path), textAt(host, path)]).toEqual([
      path,
      'missing',
      null,
      MISSING,
    ]);
  }
  expect(host.list('/')).toEqual({ kind: 'unreadable', reason: MISSING });
  expect(host.list('a.plica')).toEqual({ kind: 'unreadable', reason: 'it is a file' });
  expect(textAt(host, '..')).toBe('it is a folder');
  const link = join(scratch(), 'link');
  symlinkSync(top, link);
  expect(host.realPath(join(link, 'deep/a.plica'))).toBe(join(top, 'deep/a.plica'));
});

test('a link that leads out of the repository is not followed, and whoever wants it is told', async () => {
  const repository = scratchRepository();
  const outside = realpathSync(scratch({ 'b.plica': 'units mm\n' }));
  symlinkSync(join(outside, 'b.plica'), join(repository.top, 'b.plica'));
  symlinkSync(outside, join(repository.top, 'folder'));
  symlinkSync('../'.repeat(30).concat('etc/passwd'), join(repository.top, 'passwd.plica'));
  repository.commit('One', { 'a.plica': 'units mm\n\nuse "b.plica"\n' });
  const host = at(repository.host(), 'HEAD');
  const LEADS_OUT = 'it is a link that leads out of the repository';
  expect(textAt(host, 'b.plica')).toBe(LEADS_OUT);
  expect(textAt(host, 'folder/b.plica')).toBe(LEADS_OUT);
  expect(host.list('folder')).toEqual({ kind: 'unreadable', reason: LEADS_OUT });
  const { troubles, diagnostics } = await compiledAt(host);
  expect(troubles).toEqual([`b.plica: ${LEADS_OUT}`, `passwd.plica: ${LEADS_OUT}`]);
  expect(diagnostics).toEqual((await compiledAt(repository.host(), 'a.plica')).diagnostics);
  expect(diagnostics).toMatchObject([{ problem: { name: 'outside-root' } }]);
});

test('a submodule is not looked into; that is said where a path leads there', async () => {
  const [inner, repository] = [scratchRepository(), scratchRepository()];
  inner.commit('One', { 'b.plica': 'units mm\n' });
  repository.git('submodule', '--quiet', 'add', inner.top, 'papers');
  repository.commit('Two', { 'a.plica': 'units mm\n\nuse "papers/b.plica"\n' });
  const host = at(repository.host(), 'HEAD');
  const SHUT = 'it is in a submodule, which is not looked into';
  expect(textAt(host, 'papers/b.plica')).toBe(SHUT);
  const all = await compiledAt(host);
  expect(all).toMatchObject({ names: ['a.plica'], troubles: [] });
  expect(all.diagnostics).toMatchObject([{ why: SHUT }]);
  expect((await compiledAt(host, 'papers')).troubles).toEqual([`papers: ${SHUT}`]);
});

test('a bare repository is read as if it were checked out where it is', async () => {
  const repository = scratchRepository();
  repository.commit('One', { 'cards/tide.plica': CARD, 'cards/shared/loose.plica': STYLE(4) });
  const bare = join(scratch(), 'studio.git');
  repository.git('clone', '--quiet', '--bare', repository.top, bare);
  const here = await compiledAt(at(repository.host(), 'HEAD'));
  const there = await compiledAt(at(repositoryAt(realpathSync(bare)).host(), 'main'));
  expect(there.names).toEqual(['cards/shared/loose.plica', 'cards/tide.plica']);
  expect(there.recipes.map(({ facts }) => facts)).toEqual(here.recipes.map(({ facts }) => facts));
  expect(there).toMatchObject({ troubles: [], diagnostics: [] });
});

test('a work tree of its own, a shallow clone and longer hashes make no difference', () => {
  const repository = scratchRepository('--object-format=sha256');
  repository.commit('One', { 'a.plica': 'one' });
  repository.commit('Two', { 'a.plica': 'two' });
  const [tree, clone] = [join(scratch(), 'tree'), join(scratch(), 'clone')];
  repository.git('worktree', 'add', '--quiet', '--detach', tree, 'HEAD~1');
  repository.git('clone', '--quiet', '--depth=1', `file://${repository.top}`, clone);
  const second = repositoryAt(tree).host();
  expect([textAt(second, 'a.plica'), textAt(at(second, 'HEAD'), 'a.plica')]).toEqual(['one', 'one']);
  expect(textAt(at(second, 'main'), 'a.plica')).toBe('two');
  expect(textAt(at(repositoryAt(clone).host(), 'HEAD'), 'a.plica')).toBe('two');
});

test('a content that is damaged or gone is said, and the others are read', () => {
  const long = Array.from({ length: 5000 }, (_, index) => `${index ** 5}`).join('\n');
  const repository = scratchRepository();
  repository.commit('One', { 'a.plica': 'a', 'b.plica': 'b', 'c.plica': long, 'd.plica': 'd' });
  const place = (path: string): string => {
    const id = repository.git('rev-parse', `HEAD:${path}`);
    return `.git/objects/${id.slice(0, 2)}/${id.slice(2)}`;
  };
  repository.put({ [place('b.plica')]: null });
  repository.put({ [place('c.plica')]: null });
  // A loose object is deflated; its last bytes are a checksum (gitformat-loose(5), RFC 1950).
  const loose = deflateSync(`blob ${long.length}\0${long}`);
  repository.put({ [place('c.plica')]: loose.fill(0, loose.length - 4) });
  const host = at(repository.host(), 'HEAD');
  const read = ['a.plica', 'b.plica', 'c.plica', 'd.plica'].map((path) => textAt(host, path));
  expect(read).toEqual([
    'a',
    'its content is missing here, or damaged',
    expect.stringMatching(/^git: /),
    'd',
  ]);
});

test('a tree made to do harm leads nowhere', () => {
  const repository = scratchRepository();
  repository.commit('One', { 'a.plica': 'units mm\n' });
  const id = Buffer.from(repository.git('rev-parse', 'HEAD:a.plica'), 'hex');
  // What a tree is made of: its entries' mode, name and 20 bytes of hash (`git help hash-object`, `--literally`: unchecked).
  const names = [
    '..',
    '../b.plica',
    '.',
    '.GIT',
    '.git',
    '/c.plica',
    'a.plica',
    'd//e.plica',
    'f/../../g.plica',
  ];
  const entries = names.flatMap((name) => [Buffer.from(`100644 ${name}\0`), id]);
  repository.put({ '.git/tree': Buffer.concat(entries) });
  const hash = repository.git('hash-object', '-t', 'tree', '-w', '--literally', '.git/tree');
  const host = at(repository.host(), repository.git('commit-tree', '-m', 'Two', hash));
  expect(host.list('.')).toEqual({ kind: 'entries', entries: [{ name: 'a.plica', kind: 'file' }] });
  expect(findRecipes(host, '.').files).toEqual(['a.plica']);
  expect(host.kind('.git')).toBe('folder');
});

test('to write to what was, or to watch it, is a mistake of the program', () => {
  const repository = scratchRepository();
  repository.commit('One', { 'a.plica': '' });
  const host = at(repository.host(), 'HEAD');
  expect(() => host.write('.', [])).toThrow();
  expect(() => host.create('b.plica', new Uint8Array())).toThrow();
  expect(() => host.watch(null)).toThrow();
});
