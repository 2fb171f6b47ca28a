import { execFileSync, spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  realpathSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { findRecipes } from '../../src/host/find-recipes.js';
import { nodeHost } from '../../src/host/node-host.js';
import { projectRoot } from '../../src/host/project-root.js';
import { reader } from '../../src/host/reader.js';
import { source } from '../../src/text/source.js';
import { scratch } from '../support/scratch.js';

const host = nodeHost();
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const MOST = 1_000_000;

test('reading: what is no file is refused, and never waited for', () => {
  const folder = scratch({ 'a.plica': 'x' });
  execFileSync('mkfifo', [join(folder, 'pipe')]);
  expect(host.read(join(folder, 'a.plica'), MOST)).toMatchObject({ kind: 'bytes' });
  expect(host.read(join(folder, 'pipe'), MOST)).toEqual({
    kind: 'unreadable',
    reason: 'it is a device or a pipe',
  });
  expect(host.read('/dev/zero', MOST)).toMatchObject({ kind: 'unreadable' });
  expect(host.read(folder, MOST)).toEqual({ kind: 'unreadable', reason: 'it is a folder' });
  expect(host.read(join(folder, 'b.plica'), MOST)).toMatchObject({ kind: 'unreadable' });
  expect(host.read(join(folder, 'a.plica/b'), MOST)).toMatchObject({ kind: 'unreadable' });
  expect(host.read(join(folder, 'a.plica'), 0)).toEqual({ kind: 'too-large', bytes: 1 });
});

test.skipIf(!existsSync('/proc/self/pagemap'))(
  'reading: a file that says it is empty, and never ends, is given up',
  () => {
    expect(statSync('/proc/self/pagemap').size).toBe(0);
    expect(host.read('/proc/self/pagemap', MOST)).toEqual({ kind: 'too-large', bytes: null });
  },
);

test.skipIf(!existsSync('/proc/self/status'))(
  'reading: one that says it is empty, and is not, is read to its end',
  () => {
    const read = host.read('/proc/self/status', MOST);
    expect(read.kind === 'bytes' && new TextDecoder().decode(read.bytes)).toMatch(/^Name:[^]*\n$/);
  },
);

test('reading: the limit is of bytes, to the last one', () => {
  const folder = scratch({ 'a.plica': 'x'.repeat(100_000) });
  const path = join(folder, 'a.plica');
  expect(host.read(path, 100_000)).toEqual({ kind: 'bytes', bytes: Buffer.alloc(100_000, 'x') });
  expect(host.read(path, 99_999)).toEqual({ kind: 'too-large', bytes: 100_000 });
});

test('finding recipes: by name, links to files followed, links to folders not', () => {
  const folder = scratch({ 'b/b.plica': '', 'a.plica': '', 'b/.hidden/c.plica': '', 'c.txt': '' });
  symlinkSync(folder, join(folder, 'b/circle'));
  symlinkSync(join(folder, 'a.plica'), join(folder, 'link.plica'));
  symlinkSync(join(folder, 'nothing'), join(folder, 'dangling.plica'));
  mkdirSync(join(folder, 'folder.plica'));
  const { files, unreadable } = findRecipes(host, folder);
  expect(files).toEqual(['a.plica', 'b/b.plica', 'link.plica'].map((path) => join(folder, path)));
  expect(unreadable).toEqual([]);
});

test('the project: nearest .git upwards, else nearest catalogue.plica, else what was given', () => {
  const folder = realpathSync(scratch({ 'p/.git/HEAD': '', 'p/q/catalogue.plica': '', 'p/q/r/a.plica': '' }));
  expect(projectRoot(host, join(folder, 'p/q/r'), '/else')).toBe(join(folder, 'p'));
  const bare = realpathSync(scratch({ 'q/catalogue.plica': '', 'q/r/s/a.plica': '' }));
  expect(projectRoot(host, join(bare, 'q/r/s'), '/else')).toBe(join(bare, 'q'));
  expect(projectRoot(host, bare, '/else')).toBe('/else');
});

test('`use`: links are followed, but not out of the project; one file has one id', () => {
  const folder = realpathSync(
    scratch({ 'in/a.plica': '', 'in/b.plica': 'let b = 1', 'out/c.plica': '', 'in/deep/d.plica': '' }),
  );
  symlinkSync(join(folder, 'out/c.plica'), join(folder, 'in/escape.plica'));
  symlinkSync(join(folder, 'in/b.plica'), join(folder, 'in/deep/b.plica'));
  const root = join(folder, 'in');
  const id = join(root, 'a.plica');
  const read = reader(host, [{ input: { id, source: source('in/a.plica', '') }, root }]);
  expect(read('escape.plica', id)).toEqual({ kind: 'outside-root' });
  expect(read('../out/c.plica', id)).toEqual({ kind: 'outside-root' });
  expect(read('../out/nothing.plica', id)).toEqual({ kind: 'outside-root' });
  expect(read('nothing.plica', id)).toMatchObject({ kind: 'unreadable' });
  expect(read('deep', id)).toEqual({ kind: 'unreadable', reason: 'it is a folder' });
  const b = read('b.plica', id);
  expect(b).toMatchObject({ kind: 'source', id: join(root, 'b.plica'), source: { name: 'in/b.plica' } });
  expect(read('deep/b.plica', id)).toEqual(b);
  expect(read('a.plica', join(root, 'b.plica'))).toMatchObject({ id, source: { name: 'in/a.plica' } });
});

test('writing: all of the files, the folder made, nothing left beside', () => {
  const folder = join(scratch(), 'deep/out');
  const files = [
    { name: 'a.pdf', bytes: bytes('A') },
    { name: 'b.pdf', bytes: bytes('B') },
  ];
  expect(host.write(folder, files)).toEqual({ kind: 'written' });
  expect(readdirSync(folder)).toEqual(['a.pdf', 'b.pdf']);
  expect(readFileSync(join(folder, 'b.pdf'), 'utf8')).toBe('B');
});

test('writing: where one file cannot be, the others are as they were', () => {
  const folder = scratch({ 'a.pdf': 'old', 'mine.txt': 'mine' });
  mkdirSync(join(folder, 'c.pdf'));
  const files = ['a.pdf', 'b.pdf', 'c.pdf'].map((name) => ({ name, bytes: bytes('new') }));
  expect(host.write(folder, files)).toEqual({
    kind: 'unwritable',
    path: join(folder, 'c.pdf'),
    reason: 'something that is no file is in its place',
  });
  expect(readdirSync(folder).sort()).toEqual(['a.pdf', 'c.pdf', 'mine.txt']);
  expect(readFileSync(join(folder, 'a.pdf'), 'utf8')).toBe('old');
});

test('writing: where one file cannot be moved into its place, what was moved before is put back', () => {
  const folder = scratch({ 'a.pdf': 'old', 'mine.txt': 'mine' });
  chmodSync(join(folder, 'a.pdf'), 0o640);
  // The last has been moved away already, as the one before it.
  const files = ['a.pdf', 'b.pdf', 'b.pdf'].map((name) => ({ name, bytes: bytes('new') }));
  expect(host.write(folder, files)).toMatchObject({ kind: 'unwritable', path: join(folder, 'b.pdf') });
  expect(readdirSync(folder).sort()).toEqual(['a.pdf', 'mine.txt']);
  expect(readFileSync(join(folder, 'a.pdf'), 'utf8')).toBe('old');
  expect(statSync(join(folder, 'a.pdf')).mode & 0o777).toBe(0o640);
});

test('writing: what a process that is no more left half written is taken away, and nothing else', () => {
  const { pid: gone } = spawnSync('true');
  const strangers = ['.notes.txt.1.part', `.b.pdf.${gone}.part`, `.a.pdf.${gone}.part.txt`, '.a.pdf.part'];
  const running = `.a.pdf.${process.ppid}.part`;
  const folder = scratch(
    Object.fromEntries(
      [...strangers, running, `.a.pdf.${gone}.part`, `.a.pdf.${gone}-3.part`].map((name) => [name, '']),
    ),
  );
  expect(host.write(folder, [{ name: 'a.pdf', bytes: bytes('new') }])).toEqual({ kind: 'written' });
  expect(readdirSync(folder).sort()).toEqual([...strangers, running, 'a.pdf'].sort());
});

test('writing: a file in place of the folder is said, and kept', () => {
  const folder = scratch({ out: 'mine' });
  const files = [{ name: 'a.pdf', bytes: bytes('A') }];
  expect(host.write(join(folder, 'out'), files)).toMatchObject({ kind: 'unwritable' });
  expect(host.write(join(folder, 'out/deeper'), files)).toMatchObject({ kind: 'unwritable' });
  expect(readFileSync(join(folder, 'out'), 'utf8')).toBe('mine');
});

test.runIf(process.platform === 'linux')('writing: a place that takes no folder is said at once', () => {
  const files = [{ name: 'a.pdf', bytes: bytes('A') }];
  expect(host.write('/proc/nowhere/out', files)).toMatchObject({ kind: 'unwritable' });
});

test('writing: a link to a file is written through, not replaced', () => {
  const folder = scratch({ 'real/a.pdf': 'old' });
  mkdirSync(join(folder, 'out'));
  symlinkSync(join(folder, 'real/a.pdf'), join(folder, 'out/a.pdf'));
  expect(host.write(join(folder, 'out'), [{ name: 'a.pdf', bytes: bytes('new') }])).toEqual({
    kind: 'written',
  });
  expect(readFileSync(join(folder, 'real/a.pdf'), 'utf8')).toBe('new');
  expect(readdirSync(join(folder, 'real'))).toEqual(['a.pdf']);
});

test('writing: what a process that died left behind is cleared away, what is a user’s is not', () => {
  const folder = scratch({ [`.a.pdf.${process.pid}.part`]: 'half', '.b.pdf.part': 'mine' });
  expect(host.write(folder, [{ name: 'a.pdf', bytes: bytes('A') }])).toEqual({ kind: 'written' });
  expect(readdirSync(folder).sort()).toEqual(['.b.pdf.part', 'a.pdf']);
  writeFileSync(join(folder, 'a.pdf'), 'B');
  expect(host.write(folder, [{ name: 'a.pdf', bytes: bytes('C') }])).toEqual({ kind: 'written' });
  expect(readFileSync(join(folder, 'a.pdf'), 'utf8')).toBe('C');
});

test.runIf(process.platform !== 'win32')(
  'writing: a file keeps its permissions; a read-only one is kept',
  () => {
    const folder = scratch({ 'open.plica': 'old', 'shut.plica': 'old' });
    chmodSync(join(folder, 'open.plica'), 0o640);
    chmodSync(join(folder, 'shut.plica'), 0o444);
    const write = (name: string) => host.write(folder, [{ name, bytes: bytes('new') }]);
    expect(write('open.plica')).toEqual({ kind: 'written' });
    expect(statSync(join(folder, 'open.plica')).mode & 0o777).toBe(0o640);
    expect(write('shut.plica')).toEqual({
      kind: 'unwritable',
      path: join(folder, 'shut.plica'),
      reason: 'it is read-only',
    });
    expect(readFileSync(join(folder, 'shut.plica'), 'utf8')).toBe('old');
    expect(readdirSync(folder).sort()).toEqual(['open.plica', 'shut.plica']);
  },
);
