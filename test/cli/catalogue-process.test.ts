import { spawn, spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { scratch } from '../support/scratch.js';

const PROGRAM = resolve('dist/plica.cjs');

/** Enough recipes for threads to be worth starting: five files of sixteen. */
const MANY = Object.fromEntries(
  Array.from({ length: 5 }, (_, file) => [
    `specs/tides-${file}.plica`,
    `units in\n\n${Array.from(
      { length: 16 },
      (__, index) =>
        `envelope tide-${file}-${index} {\n  title: "Tide card ${file}, ${index}"\n  card: ${3 + index / 16} x ${4 + file / 8}\n}\n`,
    ).join('\n')}`,
  ]),
);

const plica = (folder: string, ...args: string[]) => {
  const { status, stderr, signal } = spawnSync(process.execPath, [PROGRAM, ...args], {
    cwd: folder,
    encoding: 'utf8',
  });
  return { code: status, signal, err: stderr };
};

const leaves = (folder: string): readonly string[] =>
  readdirSync(join(folder, '.plica-leaves')).filter((name) => name.endsWith('.leaf'));

test('on threads or on one, the book is the same; an edit makes one leaf anew', () => {
  const folder = scratch(MANY);
  expect(plica(folder, 'catalogue', 'specs', '--out', 'tides.pdf')).toMatchObject({
    code: 0,
    err: expect.stringMatching(/^wrote tides.pdf: 80 envelopes on \d+ pages\n$/),
  });
  const book = readFileSync(join(folder, 'tides.pdf'));
  const before = new Set(leaves(folder));
  expect(before.size).toBe(80);

  // A few recipes are worked on without threads: file by file, all leaves are those that the threads made.
  for (const path of Object.keys(MANY)) {
    const alone = scratch({ 'specs/few.plica': readFileSync(join(folder, path)).subarray(0, 1200) });
    plica(alone, 'catalogue', 'specs', '--out', 'few.csv');
    expect(leaves(alone).filter((leaf) => !before.has(leaf))).toEqual([]);
  }

  const path = join(folder, 'specs/tides-2.plica');
  writeFileSync(path, readFileSync(path, 'utf8').replace('Tide card 2, 7"', 'Tide card 2, the seventh"'));
  expect(plica(folder, 'catalogue', 'specs', '--out', 'tides.pdf').code).toBe(0);
  const after = leaves(folder);
  expect(after).toHaveLength(80);
  expect(after.filter((leaf) => !before.has(leaf))).toHaveLength(1);
  expect(readFileSync(join(folder, 'tides.pdf')).equals(book)).toBe(false);
});

test.each([
  ['SIGINT', 150],
  ['SIGINT', 900],
  ['SIGTERM', 600],
  ['SIGKILL', 300],
  ['SIGKILL', 1200],
] as const)('%s after %i ms leaves the old catalogue whole', async (signal, after) => {
  const folder = scratch({ ...MANY, 'tides.pdf': 'the old one' });
  const child = spawn(process.execPath, [PROGRAM, 'catalogue', 'specs', '--out', 'tides.pdf'], {
    cwd: folder,
  });
  const ended = new Promise<{ code: number | null; by: string | null }>((done) =>
    child.on('exit', (code, by) => done({ code, by })),
  );
  await new Promise((done) => setTimeout(done, after));
  child.kill(signal);
  const { code } = await ended;
  const book = readFileSync(join(folder, 'tides.pdf'), 'latin1');
  expect(book === 'the old one' || book.trimEnd().endsWith('%%EOF')).toBe(true);
  if (signal !== 'SIGKILL') {
    expect([130, 143, 0, null]).toContain(code);
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  }
  expect(plica(folder, 'catalogue', 'specs', '--out', 'tides.pdf').code).toBe(0);
  expect(readFileSync(join(folder, 'tides.pdf'), 'latin1').trimEnd().endsWith('%%EOF')).toBe(true);
  expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
});

test('what a process that is no more left half written is taken away, and nothing else', () => {
  const others = [
    '.tides.pdf.part',
    '.other.pdf.999999999.part',
    'tides.pdf.999999999.part',
    `.tides.pdf.${process.pid}.part`,
  ];
  const folder = scratch({
    'specs/a.plica': 'units mm\nenvelope tide { card: A6 }\n',
    '.tides.pdf.999999999.part': 'half of it',
    ...Object.fromEntries(others.map((name) => [name, 'none of ours'])),
  });
  expect(plica(folder, 'catalogue', 'specs', '--out', 'tides.pdf').code).toBe(0);
  expect(
    readdirSync(folder)
      .filter((name) => name.endsWith('.part'))
      .sort(),
  ).toEqual(others.toSorted());
});

test('two at once into one folder do each other no harm', async () => {
  const folder = scratch(MANY);
  const run = (out: string) =>
    new Promise<number | null>((done) =>
      spawn(process.execPath, [PROGRAM, 'catalogue', 'specs', '--out', out], { cwd: folder }).on(
        'exit',
        done,
      ),
    );
  expect(await Promise.all([run('a.pdf'), run('b.pdf')])).toEqual([0, 0]);
  expect(readFileSync(join(folder, 'a.pdf')).equals(readFileSync(join(folder, 'b.pdf')))).toBe(true);
});

test.each([
  [
    'a file stands where a folder is wanted',
    'specs/tides-0.plica/tides.csv',
    'part of the path is a file, not a folder',
  ],
  ['the disk takes nothing there', '/proc/plica/tides.csv', 'there is no such file or folder'],
])('%s: it is named, and nothing is left behind', (_, out, reason) => {
  const folder = scratch(MANY);
  const { code, err } = plica(folder, 'catalogue', 'specs', '--out', out);
  expect(err).toContain('cannot be written');
  expect(err).toContain(reason);
  expect(code).toBe(2);
  expect(readdirSync(folder)).toEqual(['specs']);
});
