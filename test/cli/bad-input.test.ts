import { expect, test } from 'vitest';
import { run } from '../../src/cli/run.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { GAPING, plica, SOUND } from '../support/command-line.js';

const envelope = (entries: string): string => `units in\nenvelope tides {\n${entries}\n}\n`;

/** What is written, and the rule that it breaks. */
const REFUSED: readonly (readonly [what: string, text: string, rule: string])[] = [
  ['unknown units', 'units ell\nenvelope tides { card: A6 }\n', 'unknown-name'],
  ['an unknown unit', envelope('card: 8 1/2 x 5 1/2 ell'), 'unknown-name'],
  ['a zero length', envelope('card: 0 x 5'), 'range'],
  ['a negative length', envelope('card: quarter letter\nseam: -1/2'), 'range'],
  ['a huge length', envelope('card: 9999999 x 5'), 'range'],
  ['an infinite length', envelope(`card: 1${'0'.repeat(400)} x 5`), 'syntax'],
  ['a missing card', envelope('seam: 1/2'), 'missing'],
];

test.each(REFUSED)('%s is a finding, exit 1', async (_, text, rule) => {
  const { code, out, err } = await plica('check a.plica', { files: { 'a.plica': text } });
  expect(code).toBe(1);
  expect(out).toContain(`error[${rule}]`);
  expect(out.match(/^(error|warning)\[/gm)).toHaveLength(1);
  expect(err).toBe('');
});

test.each(REFUSED)('%s: build writes nothing', async (_, text) => {
  const files = { 'a.plica': text };
  const before = Object.keys(files).length;
  const { code, err, files: after } = await plica('build a.plica --out out', { files });
  expect(code).toBe(1);
  expect(err).toContain('error[');
  expect(after.size).toBe(before);
});

test('an empty file has nothing wrong, but nothing to show or build either', async () => {
  const files = { 'empty.plica': '' };
  expect(await plica('check empty.plica', { files })).toMatchObject({
    code: 0,
    out: 'nothing wrong in 1 file, but no envelope in it either\n',
  });
  for (const line of ['show empty.plica', 'build empty.plica --out out']) {
    expect(await plica(line, { files })).toMatchObject({
      code: 2,
      out: '',
      err: 'plica: there is no envelope in what was given\n',
    });
  }
});

test('a folder without recipes', async () => {
  expect(await plica('check drawer', { folders: ['drawer'] })).toMatchObject({
    code: 2,
    out: '',
    err: 'plica: drawer: there are no recipes (*.plica) in this folder\n',
  });
});

test('a path that leads nowhere; the other files are still checked', async () => {
  const { code, out, err } = await plica('check nowhere.plica a.plica', { files: { 'a.plica': SOUND } });
  expect(code).toBe(2);
  expect(err).toBe('plica: nowhere.plica: there is no such file or folder\n');
  expect(out).toBe('nothing wrong in 1 envelope of 1 file\n');
});

test('what cannot be read is said once, though several paths lead there', async () => {
  const files = { 'drawer/a.plica': Uint8Array.of(0xff), 'b.plica': SOUND };
  const { code, err } = await plica('check . drawer drawer/a.plica moon moon', { files });
  expect(code).toBe(2);
  expect(err.trimEnd().split('\n')).toEqual([
    'plica: drawer/a.plica: line 1 is not UTF-8; save the file as UTF-8',
    'plica: moon: there is no such file or folder',
  ]);
});

test.each(['check', 'format', 'show'])(
  '%s of a path that came out empty is not of the working folder',
  async (command) => {
    const host = memoryHost({ files: { 'a.plica': SOUND.replace('units in', 'units   in') } });
    expect(await run([command, ''], host)).toBe(2);
    expect(host.said).toEqual({
      out: '',
      err: 'plica: a path that was given is empty; the working folder is `.`\n',
    });
  },
);

test('a file that is not UTF-8 names the line, and UTF-16 by its name', async () => {
  const latin = Uint8Array.from([...Buffer.from(`${SOUND}# caf`), 0xe9, 0x0a]);
  expect(await plica('check a.plica', { files: { 'a.plica': latin } })).toMatchObject({
    code: 2,
    out: '',
    err: 'plica: a.plica: line 4 is not UTF-8; save the file as UTF-8\n',
  });
  const wide = Buffer.from(`\ufeff${SOUND}`, 'utf16le');
  expect((await plica('check a.plica', { files: { 'a.plica': wide } })).err).toBe(
    'plica: a.plica: it is UTF-16, not UTF-8; save it as UTF-8\n',
  );
  const bare = Buffer.from(SOUND, 'utf16le');
  for (const bytes of [bare, Buffer.from(bare).swap16()])
    expect((await plica('check a.plica', { files: { 'a.plica': bytes } })).err).toBe(
      'plica: a.plica: it is UTF-16, not UTF-8; save it as UTF-8\n',
    );
  expect(await plica('check a.plica', { files: { 'a.plica': Uint8Array.of(0xff) } })).toMatchObject({
    code: 2,
  });
});

test('what is made of a recipe, given for it, is told for what it is', async () => {
  const built = await plica('build a.plica --emit all,facts --out out', { files: { 'a.plica': SOUND } });
  const made = [...built.files].filter(([path]) => path.includes('/out/'));
  expect(made.length).toBeGreaterThan(8);
  for (const [path, bytes] of made) {
    const { code, out, err } = await plica('check made', { files: { made: bytes } });
    expect({ path, code }).toEqual({ path, code: path.endsWith('.pdf') ? 2 : 1 });
    if (code === 2) expect(err).toBe('plica: made: it is a PDF, and no text\n');
    else
      expect(out).toMatch(
        /^error\[syntax\]: this is .* \((?:SVG|DXF|JSON)\), not a recipe\n[^]*\n1 error\n$/,
      );
  }
  const picture = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);
  expect((await plica('check made', { files: { made: picture } })).err).toContain(
    'it is a picture, and no text',
  );
});

test('a byte order mark and carriage returns change nothing', async () => {
  const text = `\ufeff${SOUND.replaceAll('\n', '\r\n')}`;
  expect(await plica('check a.plica', { files: { 'a.plica': text } })).toMatchObject({ code: 0 });
});

/** A file of a million bytes and a little. */
const LONG = `${SOUND}${'#'.repeat(1_000_000)}`;

test('a file of more than a million bytes is a finding at its start; the others are still checked', async () => {
  const { code, out, err } = await plica('check', { files: { 'a.plica': LONG, 'b.plica': GAPING } });
  expect({ code, err }).toEqual({ code: 1, err: '' });
  expect(out).toContain('error[limit]: this file is too long to be a recipe\n  --> a.plica:1:1\n');
  expect(out).toContain('it has 1,000,055 bytes, and at most 1,000,000 are read');
  expect(out).toContain('split it, and join the parts by `use`');
  expect(out).toContain('--> b.plica:');
});

test('a long standard input is a finding too; how long it is, nobody waits for', async () => {
  const { code, out } = await plica('check - --format line', { input: LONG });
  expect(code).toBe(1);
  expect(out).toMatch(/^<stdin>:1:1: error\[?.*limit/);
});

test('a long file that another uses is a finding at the `use`', async () => {
  const files = { 'a.plica': 'units in\nuse "b.plica"\n', 'b.plica': LONG };
  const { out } = await plica('check a.plica', { files });
  expect(out).toContain('error[limit]: the file `b.plica` is too long to be a recipe\n  --> a.plica:2:5\n');
});

test.each(['show a.plica', 'build a.plica --out out', 'format a.plica', 'check a.plica --fix'])(
  'a long file ends %s with 1, and stays as it is',
  async (line) => {
    const { code, out, err, files } = await plica(line, { files: { 'a.plica': LONG } });
    expect(code).toBe(1);
    expect(out + err).toContain('error[limit]: this file is too long to be a recipe');
    expect([...files.keys()]).toEqual(['/studio/a.plica']);
  },
);

test('an output folder that cannot be written', async () => {
  const { code, out, err } = await plica('build a.plica --out out', {
    files: { 'a.plica': SOUND },
    unwritable: 'permission denied',
  });
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toBe('plica: out cannot be written: permission denied\n');
});
