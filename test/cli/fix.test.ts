import { chmodSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { run } from '../../src/cli/run.js';
import { type Memory, memoryHost } from '../../src/host/memory-host.js';
import { nodeHost } from '../../src/host/node-host.js';
import { GAPING, plica, SOUND } from '../support/command-line.js';
import { scratch } from '../support/scratch.js';

/** A curly inch mark: one error, and it carries an edit. */
const CURLY = 'units in\nenvelope tides {\n  card: 8 1/2” x 5 1/2 in # as printed\n}\n';
const STRAIGHT = CURLY.replace('”', '"');
const FIXED = 'syntax: an inch mark is a straight `"`';

type Files = NonNullable<Memory['files']>;

/** What `check … --fix` came to, with the text of every file after it. */
async function fix(line: string, files: Files, memory: Memory = {}) {
  const outcome = await plica(`check --fix ${line}`, { files, ...memory });
  const decoder = new TextDecoder('utf-8', { ignoreBOM: true });
  const texts = [...outcome.files].map(([path, bytes]) => [
    path.replace('/studio/', ''),
    decoder.decode(bytes),
  ]);
  return { ...outcome, files: Object.fromEntries(texts) };
}

test('an edit is written and told, its comment stays, and nothing is wrong any more', async () => {
  expect(await fix('a.plica', { 'a.plica': CURLY })).toEqual({
    code: 0,
    out: 'nothing wrong in 1 envelope of 1 file\n',
    err: `fixed a.plica:3:14: ${FIXED}\n1 mended in 1 file\n`,
    files: { 'a.plica': STRAIGHT },
  });
});

test('what carries no edit is shown as ever, and nothing is written for it', async () => {
  const host = memoryHost({ files: { 'a.plica': GAPING.replace('blank', 'caliper') } });
  const write: typeof host.write = () => {
    throw new Error('written');
  };
  expect(await run(['check', 'a.plica', '--fix'], { ...host, write })).toBe(1);
  expect(host.said.err).toBe('');
  expect(host.said.out).toMatch(/\n1 error\n$/);
});

test('a sound file is left as it is', async () => {
  const { code, err, files } = await fix('a.plica', { 'a.plica': SOUND });
  expect({ code, err, files }).toEqual({ code: 0, err: '', files: { 'a.plica': SOUND } });
});

test('a byte order mark and CRLF stay, and what is put in ends its lines alike', async () => {
  const open = '\ufeffunits in\nenvelope tides {\n  card: 8 1/2 x 5 1/2; seam: 1/2 # as printed\n';
  const { code, files } = await fix('a.plica', { 'a.plica': open.replaceAll('\n', '\r\n') });
  expect(code).toBe(0);
  expect(files['a.plica'].split('\r\n')).toEqual([
    '\ufeffunits in',
    'envelope tides {',
    '  card: 8 1/2 x 5 1/2',
    '  seam: 1/2 # as printed',
    '}',
    '',
  ]);
});

test('two files: each is mended, and counted', async () => {
  const { code, err, files } = await fix('.', {
    'a.plica': CURLY,
    'b.plica': CURLY.replace('tides', 'ebb'),
    'c.plica': SOUND,
  });
  expect(code).toBe(0);
  expect(err).toBe(`fixed a.plica:3:14: ${FIXED}\nfixed b.plica:3:14: ${FIXED}\n2 mended in 2 files\n`);
  expect(files).toEqual({
    'a.plica': STRAIGHT,
    'b.plica': STRAIGHT.replace('tides', 'ebb'),
    'c.plica': SOUND,
  });
});

test('several on one line: those that touch come one after the other', async () => {
  const { code, err, files } = await fix('a.plica', {
    'a.plica': 'units in\nenvelope tides {\n  card: 8 1/2” x 5 1/2”; seam: 1/2 # as printed\n}\n',
  });
  expect(code).toBe(0);
  expect(files['a.plica']).toBe(
    'units in\nenvelope tides {\n  card: 8 1/2" x 5 1/2"\n  seam: 1/2 # as printed\n}\n',
  );
  expect(err.split('\n').map((line) => line.split(' ').slice(0, 2).join(' '))).toEqual([
    'fixed a.plica:3:14:',
    'fixed a.plica:3:23:',
    'fixed a.plica:3:24:',
    '3 mended',
    '',
  ]);
});

test('what remains goes to standard output, in the format asked for', async () => {
  const both = `${CURLY}\n${GAPING.replace('units in\n', '')}`;
  const { code, out, err } = await fix('a.plica --format line', { 'a.plica': both });
  expect(code).toBe(1);
  expect(out).toMatch(/^a\.plica:9:10: error: creases-cross: .*\n$/);
  expect(err).toContain('1 mended in 1 file\n');
});

test('a file that is only used is not changed, and that is said', async () => {
  const files = {
    'a.plica': `use "papers.plica"\n${SOUND}`.replace(/(use.*\n)(units.*\n)/, '$2$1'),
    'papers.plica': 'units in\nstyle house { seam: 1/2” }\n',
  };
  const outcome = await fix('a.plica', files);
  expect(outcome.files).toEqual(files);
  expect(outcome.code).toBe(1);
  expect(outcome.err).toBe(
    `left papers.plica:2:24: ${FIXED} (papers.plica was not given, so it is not changed)\n`,
  );
  expect((await fix('.', files)).files['papers.plica']).toBe('units in\nstyle house { seam: 1/2" }\n');
});

test('an edit after which more would be wrong is not made, and that is said', async () => {
  const hiding =
    GAPING.replace('units in', 'units inch') + GAPING.replace('units in', '').replace('gaping', 'b');
  const { code, err, files } = await fix('a.plica', { 'a.plica': hiding });
  expect(files['a.plica']).toBe(hiding);
  expect(code).toBe(1);
  expect(err).toBe(
    'left a.plica:1:7: unknown-name: `units` is `mm`, `cm` or `in`, not `inch` (its edit does not serve here by itself)\n',
  );
  const one = await fix('a.plica', { 'a.plica': GAPING.replace('units in', 'units inch') });
  expect(one.files['a.plica']).toBe(GAPING);
  expect(one.out).toContain('error[creases-cross]');
});

test('a read-only file: said, 2, its findings stand, the others are mended', async () => {
  const { code, out, err, files } = await fix(
    'a.plica b.plica',
    { 'a.plica': CURLY, 'b.plica': CURLY.replace('tides', 'ebb') },
    { readOnly: ['a.plica'] },
  );
  expect(code).toBe(2);
  expect(err).toBe(
    `plica: a.plica cannot be written: it is read-only\nfixed b.plica:3:14: ${FIXED}\n1 mended in 1 file\n`,
  );
  expect(out).toMatch(/--> a\.plica:3:14/);
  expect(files).toEqual({ 'a.plica': CURLY, 'b.plica': STRAIGHT.replace('tides', 'ebb') });
});

test('standard input is refused, before anything is read', async () => {
  expect(await plica('check - --fix', { input: CURLY })).toMatchObject({
    code: 2,
    out: '',
    err: 'plica: `check --fix` writes into files, and standard input is none; give it the file\n',
  });
});

test('names of files and what a recipe says are shown harmlessly', async () => {
  const { err } = await fix('.', { 'a\u001b[2J.plica': CURLY });
  expect(err).toMatch(/^fixed a\\u\{1b\}\[2J\.plica:3:14: /);
});

test.runIf(process.platform !== 'win32')(
  'on a disk: bytes, permissions, and nothing left beside',
  async () => {
    const folder = scratch({ 'a.plica': `\ufeff${CURLY}`, 'b.plica': CURLY.replace('tides', 'ebb') });
    const path = (name: string): string => join(folder, name);
    chmodSync(path('a.plica'), 0o640);
    chmodSync(path('b.plica'), 0o444);
    const said = { out: '', err: '' };
    const outlet = (stream: 'out' | 'err') => ({
      write: (text: string) => {
        said[stream] += text;
      },
      isRead: () => true,
      isTerminal: () => false,
      columns: () => null,
    });
    const host = { ...nodeHost(), out: outlet('out'), err: outlet('err') };
    expect(await run(['check', '--fix', folder], host)).toBe(2);
    expect(said.err).toContain('b.plica cannot be written: it is read-only\n');
    expect(readFileSync(path('a.plica'), 'utf8')).toBe(`\ufeff${STRAIGHT}`);
    expect(statSync(path('a.plica')).mode & 0o777).toBe(0o640);
    expect(readFileSync(path('b.plica'), 'utf8')).toBe(CURLY.replace('tides', 'ebb'));
    expect(readdirSync(folder).sort()).toEqual(['a.plica', 'b.plica']);
  },
);
