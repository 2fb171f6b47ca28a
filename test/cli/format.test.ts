import { expect, test } from 'vitest';
import { type Outcome, plica, SOUND } from '../support/command-line.js';

const LOOSE = 'units   in\nenvelope half-letter{card:8 1/2x5 1/2}';
const SLIP = 'envelope half-letter {\n  card = A6\n}\n';

const textOf = ({ files }: Outcome, path: string): string =>
  new TextDecoder('utf-8', { ignoreBOM: true }).decode(files.get(`/studio/${path}`));

test('files are written back in the layout, those of the working folder where none is given', async () => {
  const files = { 'a.plica': LOOSE, 'b/b.plica': SOUND, 'c.txt': LOOSE };
  const outcome = await plica('format', { files });
  expect(outcome).toMatchObject({ code: 0, out: '', err: 'formatted 1 of 2 files\n' });
  expect(textOf(outcome, 'a.plica')).toBe(SOUND);
  expect(textOf(outcome, 'c.txt')).toBe(LOOSE);
});

test('a file in the layout is not written', async () => {
  const files = { 'a.plica': SOUND };
  const outcome = await plica('format a.plica', { files, unwritable: 'permission denied' });
  expect(outcome).toMatchObject({ code: 0, out: '', err: 'nothing to format in 1 file\n' });
});

test('--check writes nothing, and lists what would change', async () => {
  const files = { 'a.plica': LOOSE, 'b.plica': SOUND, 'c.plica': LOOSE };
  const outcome = await plica('format --check', { files });
  expect(outcome).toMatchObject({
    code: 1,
    out: 'a.plica\nc.plica\n',
    err: 'would format 2 of 3 files\n',
  });
  expect(textOf(outcome, 'a.plica')).toBe(LOOSE);
  expect(await plica('format --check b.plica', { files })).toMatchObject({
    code: 0,
    out: '',
    err: 'nothing to format in 1 file\n',
  });
});

test('standard input goes to standard output, and nothing else is said', async () => {
  expect(await plica('format -', { input: LOOSE })).toMatchObject({ code: 0, out: SOUND, err: '' });
  expect(await plica('format -', { input: SOUND })).toMatchObject({ code: 0, out: SOUND, err: '' });
  expect(await plica('format -', { input: '' })).toMatchObject({ code: 0, out: '', err: '' });
  expect(await plica('format - --check', { input: LOOSE })).toMatchObject({ code: 1, out: '<stdin>\n' });
});

test('a byte order mark on standard input is passed on', async () => {
  expect(await plica('format -', { input: `\ufeff${LOOSE}` })).toMatchObject({
    code: 0,
    out: `\ufeff${SOUND}`,
    err: '',
  });
  expect(await plica('format - --check', { input: `\ufeff${SOUND}` })).toMatchObject({ code: 0, out: '' });
});

test('standard input with a slip: the finding on standard error, nothing on standard output', async () => {
  const { code, out, err } = await plica('format -', { input: SLIP });
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(err).toMatch(/^error\[syntax\].*\n +--> <stdin>:2:/);
  expect(err).toMatch(/\n1 error\n$/);
});

test.each(['format', 'format --check'])(
  '%s: a file with a slip is left as it is, the others are not',
  async (line) => {
    const files = { 'a.plica': SLIP, 'b.plica': LOOSE };
    const outcome = await plica(line, { files });
    expect(outcome.code).toBe(1);
    expect(outcome.err).toContain('--> a.plica:2:');
    expect(outcome.err).toMatch(
      /\n1 error\n(formatted|would format) 1 of 2 files; passed over 1 file with slips\n$/,
    );
    expect(textOf(outcome, 'a.plica')).toBe(SLIP);
  },
);

test('brackets nested too deep are left as they are too', async () => {
  const text = `units in\nlet a = ${'('.repeat(51)}1${')'.repeat(51)}\n`;
  const outcome = await plica('format a.plica', { files: { 'a.plica': text } });
  expect(outcome).toMatchObject({ code: 1, out: '' });
  expect(outcome.err).toContain('error[limit]');
  expect(textOf(outcome, 'a.plica')).toBe(text);
});

test('only writing is minded: names that are not known, and files that are not there, are no trouble', async () => {
  const text = 'use "lost.plica"\n\nenvelope tides like nobody { card: elsewhere }\n';
  expect(await plica('format a.plica', { files: { 'a.plica': text } })).toMatchObject({ code: 0, out: '' });
});

test('a byte order mark and the line ends are kept', async () => {
  const outcome = await plica('format', { files: { 'a.plica': `\ufeff${LOOSE.replace('\n', '\r\n')}` } });
  expect(outcome.code).toBe(0);
  expect(textOf(outcome, 'a.plica')).toBe(`\ufeff${SOUND.replaceAll('\n', '\r\n')}`);
});

test('what cannot be read or written is said, ends with 2, and keeps nothing else back', async () => {
  const files = { 'a.plica': Uint8Array.of(0xff), 'b.plica': LOOSE };
  const outcome = await plica('format', { files });
  expect(outcome).toMatchObject({ code: 2, out: '' });
  expect(outcome.err).toBe(
    'plica: a.plica: line 1 is not UTF-8; save the file as UTF-8\nformatted 1 of 1 file\n',
  );
  expect(textOf(outcome, 'b.plica')).toBe(SOUND);
  expect(await plica('format b.plica', { files, unwritable: 'permission denied' })).toMatchObject({
    code: 2,
    out: '',
    err: 'plica: b.plica cannot be written: permission denied\n',
  });
  expect(await plica('format nowhere.plica')).toMatchObject({
    code: 2,
    out: '',
    err: 'plica: nowhere.plica: there is no such file or folder\n',
  });
});

test('a file’s name cannot move the cursor', async () => {
  const { out } = await plica('format --check', { files: { 'a\u001b[2J.plica': LOOSE } });
  expect(out).toBe('a\\u{1b}[2J.plica\n');
});

test('the help fits 96 columns and has an example', async () => {
  const { code, out } = await plica('format --help');
  expect(code).toBe(0);
  expect(out).toContain('\nExample: plica format ');
  expect(Math.max(...out.split('\n').map(({ length }) => length))).toBeLessThanOrEqual(96);
});
