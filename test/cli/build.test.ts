import { expect, test } from 'vitest';
import { GAPING, plica, SOUND, TIGHT } from '../support/command-line.js';

const written = (files: ReadonlyMap<string, Uint8Array>): readonly string[] =>
  [...files.keys()].filter((path) => path.startsWith('/studio/out/')).sort();

test('a cut sheet, a template and a drawing, and one line that says so and what to do next', async () => {
  const { code, out, err, files } = await plica('build a.plica --out out', { files: { 'a.plica': SOUND } });
  expect({ code, out }).toEqual({ code: 0, out: '' });
  expect(err).toBe(
    'wrote out/half-letter.cut-sheet.pdf, out/half-letter.template.pdf and 1 more file; next: print a template at 100 % and measure its scale bars\n',
  );
  expect(written(files)).toEqual([
    '/studio/out/half-letter.cut-sheet.pdf',
    '/studio/out/half-letter.svg',
    '/studio/out/half-letter.template.pdf',
  ]);
  for (const path of written(files)) {
    const [start] = Buffer.from(files.get(path) ?? [])
      .toString('latin1')
      .match(/^(%PDF-|<svg )/) ?? [''];
    expect(start, path).toBe(path.endsWith('.pdf') ? '%PDF-' : '<svg ');
  }
});

test('--emit picks the kinds of file; all of them, each as what it is', async () => {
  const files = { 'a.plica': SOUND };
  const picked = await plica('build a.plica --out out --emit fold,card', { files });
  expect(written(picked.files)).toEqual(['/studio/out/half-letter.card.svg', '/studio/out/half-letter.fold']);
  expect(picked.err).toBe('wrote out/half-letter.card.svg and out/half-letter.fold\n');
  const all = await plica('build a.plica --out out --emit all', { files });
  expect(written(all.files).map((path) => path.replace('/studio/out/half-letter', ''))).toEqual([
    '.card.svg',
    '.cut-sheet.pdf',
    '.dxf',
    '.fold',
    '.print.pdf',
    '.steps.svg',
    '.svg',
    '.template.pdf',
  ]);
});

test('a lining has drawings of its own', async () => {
  const text = SOUND.replace(' }', '\n  liner: inset 1/4 }');
  const { files } = await plica('build a.plica --out out --emit svg,dxf', { files: { 'a.plica': text } });
  expect(written(files).map((path) => path.replace('/studio/out/half-letter', ''))).toEqual([
    '.dxf',
    '.lining.dxf',
    '.lining.svg',
    '.svg',
  ]);
});

test('a kind of file that is not known is met with the nearest, and all there are', async () => {
  const { code, err, files } = await plica('build a.plica --out out --emit svg,stps', {
    files: { 'a.plica': SOUND },
  });
  expect({ code, written: written(files) }).toEqual({ code: 2, written: [] });
  expect(err).toContain('not `stps`; did you mean `steps`?');
  const { out: help } = await plica('build --help', {});
  expect(help).toMatch(/^ {2}fold +crease pattern .* FOLD$/m);
  expect(help).toContain('left out: cut-sheet,template,svg');
});

test('an envelope with an error writes nothing, the others are built', async () => {
  const text = SOUND + GAPING.replace('units in\n', '');
  const { code, err, files } = await plica('build a.plica --out out', { files: { 'a.plica': text } });
  expect(code).toBe(1);
  expect(err).toContain('error[creases-cross]');
  expect(err).toMatch(/\nwrote .*half-letter/);
  expect(written(files).join()).not.toContain('gaping');
  expect(written(files)).toHaveLength(3);
});

test('an envelope with a warning is built, but not strictly', async () => {
  const files = { 'a.plica': TIGHT };
  const built = await plica('build a.plica --out out', { files });
  expect(built.code).toBe(0);
  expect(written(built.files)).toHaveLength(3);
  const strict = await plica('build a.plica --out out --strict', { files });
  expect(strict.code).toBe(1);
  expect(written(strict.files)).toHaveLength(0);
});

test('the same input gives the same bytes; SOURCE_DATE_EPOCH is stamped in', async () => {
  const build = async (env: Readonly<Record<string, string>>): Promise<string> => {
    const { files } = await plica('build a.plica --out out', { files: { 'a.plica': SOUND }, env });
    return written(files)
      .map((path) => Buffer.from(files.get(path) ?? []).toString('latin1'))
      .join();
  };
  const plain = await build({});
  expect(await build({})).toBe(plain);
  expect(await build({ SOURCE_DATE_EPOCH: '1000000000' })).toContain('D:20010909014640Z');
  const wrong = await plica('build a.plica --out out', {
    files: { 'a.plica': SOUND },
    env: { SOURCE_DATE_EPOCH: 'yesterday' },
  });
  expect(wrong).toMatchObject({
    code: 2,
    err: 'plica: SOURCE_DATE_EPOCH is not a number of seconds since 1970\n',
  });
});

test('the page and the margin reach the template', async () => {
  const template = async (options: string): Promise<string> => {
    const { files } = await plica(`build a.plica --out out ${options}`, { files: { 'a.plica': SOUND } });
    return Buffer.from(files.get('/studio/out/half-letter.template.pdf') ?? []).toString('latin1');
  };
  // ISO 216: A3 is 297 x 420 mm, and a point is 1/72 in.
  expect(await template('--page a3')).toMatch(/MediaBox \[0 0 841\.8\d* 1190\.5\d*\]/);
  expect(await template('--page a4 --margin 1/2in')).not.toBe(await template('--page a4'));
});
