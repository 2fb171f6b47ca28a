import { describe, expect, test } from 'vitest';
import { GAPING, plica, SOUND, TIGHT } from '../support/command-line.js';

const STATED = 'units in\n\ncatalogue {\n  title: "Tides"\n  section "Thin": half-letter\n}\n';
const files = { 'specs/half.plica': SOUND, 'specs/snug.plica': TIGHT, 'specs/catalogue.plica': STATED };

const text = (bytes: Uint8Array | undefined): string => Buffer.from(bytes ?? []).toString();

test('a folder becomes one book, by the ending of the file', async () => {
  const first: Readonly<Record<string, string>> = {
    pdf: '%PDF-1.7',
    html: '<!doctype html>',
    csv: '\ufeffname,title,section',
    md: '# `Tides`',
    json: '{\n  "format": "plica-facts"',
  };
  for (const [ending, beginning] of Object.entries(first)) {
    const { code, err, files: after } = await plica(`catalogue specs --out out/tides.${ending}`, { files });
    expect(err).toContain(`wrote out/tides.${ending}: 2 envelopes`);
    expect(code).toBe(0);
    expect(text(after.get(`/studio/out/tides.${ending}`))).toMatch(
      new RegExp(`^${beginning.replace(/[{%.]/g, '\\$&')}`),
    );
  }
});

test('sections come in the order written, and what none takes comes last', async () => {
  const { files: after } = await plica('catalogue specs --out tides.md', { files });
  expect(text(after.get('/studio/tides.md')).match(/^## .*$/gm)).toEqual(['## `Thin`', '## `Others`']);
});

test('without a statement the book is called as its folder', async () => {
  const { files: after } = await plica('catalogue specs --out tides.md', {
    files: { 'specs/half.plica': SOUND },
  });
  expect(text(after.get('/studio/tides.md'))).toMatch(/^# `specs`\n/);
});

test('what has an error is left out, told in the book and on standard error, and ends with 1', async () => {
  const {
    code,
    err,
    files: after,
  } = await plica('catalogue specs --out tides.md', {
    files: { ...files, 'specs/gaping.plica': GAPING },
  });
  expect(code).toBe(1);
  expect(err).toContain('specs/gaping.plica'.replace('specs/', ''));
  expect(err).toContain('`plica check specs` tells how to mend them');
  const book = text(after.get('/studio/tides.md'));
  expect(book).toContain('## Not in this book yet');
  expect(book).toContain('creases-cross');
  expect(book).not.toMatch(/^\| `gaping`/m);
});

test('with --strict nothing is written unless nothing is found', async () => {
  const found = await plica('catalogue specs --out tides.md --strict', { files });
  expect(found.code).toBe(1);
  expect(found.files.has('/studio/tides.md')).toBe(false);
  const sound = await plica('catalogue specs --out tides.md --strict', {
    files: { 'specs/half.plica': SOUND },
  });
  expect(sound.code).toBe(0);
});

test('a section’s name that no envelope has is an error, with what may have been meant', async () => {
  const {
    code,
    err,
    files: after,
  } = await plica('catalogue specs --out tides.md', {
    files: { ...files, 'specs/catalogue.plica': STATED.replace('half-letter', 'half-leter') },
  });
  expect(code).toBe(1);
  expect(err).toContain(
    'catalogue.plica:5:19: error: unknown-name: `half-leter` is no envelope of this folder',
  );
  expect(text(after.get('/studio/tides.md'))).toContain('half-leter');
});

test('a name that two files declare is an error, and the first of them stays', async () => {
  const {
    code,
    err,
    files: after,
  } = await plica('catalogue specs --out tides.csv', {
    files: { 'specs/a.plica': SOUND, 'specs/b.plica': SOUND },
  });
  expect(code).toBe(1);
  expect(err).toContain('b.plica:3:10: error: repeated: `half-letter` is declared twice');
  expect(text(after.get('/studio/tides.csv')).split('\r\n')).toHaveLength(3);
});

test('the same folder gives the same bytes, cold, from what was kept, and keeping nothing', async () => {
  const cold = await plica('catalogue specs --out tides.pdf', { files });
  const kept = Object.fromEntries([...cold.files].map(([path, bytes]) => [path, bytes]));
  const warm = await plica('catalogue specs --out tides.pdf', { files: kept });
  const fresh = await plica('catalogue specs --out tides.pdf --no-cache', { files });
  const book = cold.files.get('/studio/tides.pdf');
  expect(warm.files.get('/studio/tides.pdf')).toEqual(book);
  expect(fresh.files.get('/studio/tides.pdf')).toEqual(book);
  expect([...fresh.files.keys()].filter((path) => path.includes('.plica-leaves'))).toEqual([]);
});

test('a leaf that was damaged, cut short or swapped is noticed, and made again', async () => {
  const cold = await plica('catalogue specs --out tides.pdf', { files });
  const leaves = [...cold.files.keys()].filter((path) => path.endsWith('.leaf'));
  expect(leaves).toHaveLength(2);
  const damages: readonly ((bytes: Uint8Array) => Uint8Array)[] = [
    (bytes) => bytes.map((byte, index) => (index === 2000 ? byte ^ 1 : byte)),
    (bytes) => bytes.slice(0, -1),
    () => new Uint8Array(),
    () => Buffer.from('not a leaf\n'),
  ];
  for (const damage of damages) {
    const before = Object.fromEntries(
      [...cold.files].map(([path, bytes]) => [path, path === leaves[0] ? damage(bytes) : bytes]),
    );
    const { code, files: after } = await plica('catalogue specs --out tides.pdf', { files: before });
    expect(code).toBe(0);
    expect(after.get('/studio/tides.pdf')).toEqual(cold.files.get('/studio/tides.pdf'));
    expect(after.get(leaves[0] ?? '')).toEqual(cold.files.get(leaves[0] ?? ''));
  }
});

test('leaves that no book needs any more are cleared away, and nothing else', async () => {
  const other = { '.plica-leaves/mine.txt': 'a note', '.plica-leaves/x.leaf': 'none of ours' };
  const first = await plica('catalogue specs --out a.csv', { files: { ...files, ...other } });
  const both = await plica('catalogue specs --out b.csv', { files: Object.fromEntries(first.files) });
  const edited = Object.fromEntries(both.files);
  edited['/studio/specs/half.plica'] = Buffer.from(SOUND.replace('5 1/2', '5 3/4'));
  const leavesOf = (after: ReadonlyMap<string, Uint8Array>) =>
    [...after.keys()].filter((path) => /[0-9a-f]{64}\.leaf$/.test(path)).length;
  const again = await plica('catalogue specs --out a.csv', { files: edited });
  expect(leavesOf(again.files)).toBe(3);
  const last = await plica('catalogue specs --out b.csv', { files: Object.fromEntries(again.files) });
  expect(leavesOf(last.files)).toBe(2);
  expect(last.files.has('/studio/.plica-leaves/mine.txt')).toBe(true);
  expect(last.files.has('/studio/.plica-leaves/x.leaf')).toBe(true);
});

describe('what cannot be done is said, and nothing is written', () => {
  const refused: readonly (readonly [line: string, said: string])[] = [
    ['catalogue specs', 'say where to write, as in `--out tides.pdf`'],
    ['catalogue specs --out tides', 'its name ends in one of `.pdf`, `.html`, `.csv`, `.md`, `.json`'],
    ['catalogue specs --out specs.doc', 'its name ends in one of'],
    ['catalogue spec --out a.pdf', 'there is no such file or folder; did you mean `specs`?'],
    ['catalogue specs/half.plica --out a.pdf', 'is not a folder; give the folder of the recipes, as `specs`'],
    ['catalogue specs --out a.csv --booklet', '`--booklet` is for printing: its file ends in `.pdf`'],
    ['catalogue empty --out a.pdf', 'there is no sound envelope to make a catalogue of'],
    ['catalogue specs --out a.pdf --from-facts specs', 'there are no facts (*.facts.json) here'],
    ['catalogue a b --out a.pdf', 'does not know what to do with `b`'],
  ];
  test.each(refused)('%s', async (line, said) => {
    const { code, err, files: after } = await plica(line, { files, folders: ['empty'] });
    expect(err).toContain(said);
    expect(code).toBe(2);
    expect([...after.keys()].filter((path) => !path.startsWith('/studio/specs'))).toEqual([]);
  });

  test('a place that cannot be written', async () => {
    const { code, err } = await plica('catalogue specs --out a.csv', {
      files,
      unwritable: 'the disk is full',
    });
    expect(err).toContain('cannot be written: the disk is full');
    expect(code).toBe(2);
  });
});

test('a file that cannot be read is named, and the book made of the others', async () => {
  const {
    code,
    err,
    files: after,
  } = await plica('catalogue specs --out tides.md', {
    files: {
      ...files,
      'specs/latin.plica': new Uint8Array([0x23, 0xe4]),
      'specs/long.plica': '#'.repeat(1_000_001),
    },
  });
  expect(code).toBe(2);
  expect(err).toContain('plica: latin.plica: line 1 is not UTF-8; save the file as UTF-8');
  expect(err).toContain('plica: long.plica: it is too long to be a recipe file');
  expect(text(after.get('/studio/tides.md'))).toContain('`half-letter`');
});

test('check looks up what sections take, where a whole folder is given', async () => {
  const stated = 'catalogue {\n  section "Thin": half-leter, tagged tide, tagged\n}\n';
  const recipes = { 'specs/half.plica': SOUND, 'specs/catalogue.plica': stated };
  const whole = await plica('check specs --format line', { files: recipes });
  expect(whole.out).toContain(
    'specs/catalogue.plica:2:19: error: unknown-name: `half-leter` is no envelope of this folder',
  );
  expect(whole.out).toContain('warning: unknown-name: no envelope of this folder is tagged `tide`');
  expect(whole.out).toContain('`tagged` is no envelope of this folder');
  expect(whole.code).toBe(1);
  const broken = await plica('check specs --format line', {
    files: { ...recipes, 'specs/broken.plica': 'units in\nenvelope broken { card: A66 }\n' },
  });
  expect(broken.out).not.toContain('is tagged'); // the broken one may be
  const one = await plica('check specs/catalogue.plica', { files: recipes });
  expect(one.code).toBe(0);
});
