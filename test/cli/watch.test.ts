import { describe, expect, test } from 'vitest';
import type { Memory } from '../../src/host/memory-host.js';
import { GAPING, plica, SOUND } from '../support/command-line.js';

const HOUSE = 'units in\nstyle house { seam: 1/2 }\n';
const USER = 'units in\nuse "house.plica"\nenvelope ebb like house { card: 8 1/2 x 5 1/2 }\n';

/** What `watch` says on standard output while the files change, one change after the other, until Ctrl-C. */
async function watch(
  files: Memory['files'] & {},
  changes: Memory['changes'] & {},
  line = '',
): Promise<string> {
  const { code, out } = await plica(`watch ${line}`, { files, changes });
  expect(code).toBe(0);
  return out;
}

const FIRST = 'nothing wrong in 1 envelope of 1 file\n';

test('it checks at the start, says what it watches and how to end, and ends with 0', async () => {
  const { code, out, err } = await plica('watch', { files: { 'a.plica': SOUND } });
  expect({ code, out, err }).toEqual({ code: 0, out: FIRST, err: 'watching .; Ctrl-C ends it\n' });
});

describe('after a save', () => {
  test('what changed is named, and checked again; a file that did not change is not', async () => {
    const out = await watch({ 'a.plica': SOUND, 'b.plica': GAPING }, [{ 'a.plica': `${SOUND}# later\n` }]);
    const [, after] = out.split('a.plica changed\n');
    expect(after).toBe(`${FIRST}1 finding in 1 other file as before\n`);
  });

  test('a mistake is shown, and that it is mended', async () => {
    const out = await watch({ 'a.plica': SOUND }, [{ 'a.plica': GAPING }, { 'a.plica': SOUND }]);
    const [first, broken, mended] = out.split('a.plica changed\n');
    expect(first).toBe(FIRST);
    expect(broken).toMatch(/^error\[creases-cross\]/);
    expect(mended).toBe(FIRST);
  });

  test('a text half written is a finding for a moment, and nothing more', async () => {
    const out = await watch({ 'a.plica': SOUND }, [{ 'a.plica': SOUND.slice(0, 40) }, { 'a.plica': SOUND }]);
    expect(out).toContain('error[syntax]');
    expect(out.endsWith(`a.plica changed\n${FIRST}`)).toBe(true);
  });

  test('the same text again says nothing', async () => {
    expect(await watch({ 'a.plica': SOUND }, [{ 'a.plica': SOUND }, {}])).toBe(FIRST);
  });

  test('files that use the one saved are checked again, directly or through others', async () => {
    const files = {
      'house.plica': HOUSE,
      'between.plica': 'units in\nuse "house.plica"\n',
      'user.plica': USER.replace('house.plica', 'between.plica'),
      'other.plica': GAPING,
    };
    const out = await watch(
      files,
      [{ 'house.plica': HOUSE.replace('1/2', '1/64') }],
      'user.plica other.plica',
    );
    const [, after] = out.split('house.plica changed\n');
    expect(after).toContain('error[seam-holds]');
    expect(after).not.toContain('creases-cross');
    expect(after).toContain('1 finding in 1 other file as before\n');
  });
});

describe('files come and go', () => {
  test('a new file is checked', async () => {
    const out = await watch({ 'a.plica': SOUND }, [{ 'b.plica': GAPING }]);
    expect(out).toContain('b.plica is new\nerror[creases-cross]');
  });

  test('a file renamed is one that is gone and one that is new', async () => {
    const out = await watch({ 'a.plica': SOUND }, [{ 'a.plica': null, 'b.plica': SOUND }]);
    expect(out).toBe(`${FIRST}b.plica is new\na.plica is gone\n${FIRST}`);
  });

  test('the file that others use: gone it is missed at the use, back all is well', async () => {
    const files = { 'house.plica': HOUSE, 'user.plica': USER };
    const out = await watch(files, [{ 'house.plica': null }, { 'house.plica': HOUSE }], 'user.plica');
    expect(out).toContain('house.plica is gone\nerror[unknown-name]: the file `house.plica` cannot be read');
    expect(out.endsWith(`house.plica is new\n${FIRST}`)).toBe(true);
  });

  test('a folder that vanishes is said once, and its files are checked when it is back', async () => {
    const { out, err } = await plica('watch specs', {
      files: { 'specs/a.plica': SOUND },
      changes: [{ 'specs/a.plica': null }, {}, { 'specs/a.plica': SOUND }],
    });
    expect(err.match(/^plica: specs: .*$/gm)).toEqual(['plica: specs: there is no such file or folder']);
    expect(out).toBe(`${FIRST}specs/a.plica is gone\nspecs/a.plica is new\n${FIRST}`);
  });

  test('a file that cannot be read for a while is said, and is no end', async () => {
    const { out, err } = await plica('watch', {
      files: { 'a.plica': SOUND },
      changes: [{ 'a.plica': Uint8Array.of(0xff) }, { 'a.plica': SOUND }],
    });
    expect(err).toContain('plica: a.plica: line 1 is not UTF-8');
    expect(out).toBe(`${FIRST}a.plica is left out\na.plica is new\n${FIRST}`);
  });

  test('a file that grows too long is a finding', async () => {
    const out = await watch({ 'a.plica': SOUND }, [{ 'a.plica': SOUND + '#'.repeat(1_000_000) }]);
    expect(out).toContain('a.plica changed\nerror[limit]: this file is too long to be a recipe');
  });
});

test('a name taken in another file is found, whichever of the two was saved; mended, both are well', async () => {
  const again = `${SOUND}envelope half-letter-too { card: 8 1/2 x 5 1/2 }\n`;
  const changes = [{ 'a.plica': again.replace('-too', '') }, { 'a.plica': again }];
  const files = { 'a.plica': again, 'b.plica': SOUND.replace('half-letter', 'ebb') };
  const clash = await watch(files, [
    { 'a.plica': SOUND.replace('half-letter', 'ebb') },
    { 'a.plica': again },
  ]);
  const [, taken, free] = clash.split('a.plica changed\n');
  expect(taken).toMatch(/^error\[repeated\]: `ebb` is declared twice\n {2}--> b\.plica/);
  expect(free).toBe('nothing wrong in 3 envelopes of 2 files\n');
  expect(await watch({ 'a.plica': again }, changes)).toContain('error[repeated]');
});

test('after any changes, what stands is what `check` says of the files as they then are', async () => {
  const states = [SOUND, GAPING, USER, HOUSE, 'units in\nenvelope', SOUND.replace('half-letter', 'ebb')];
  const names = ['a.plica', 'b.plica', 'house.plica'];
  const files: Record<string, string> = { 'a.plica': USER, 'b.plica': GAPING, 'house.plica': HOUSE };
  for (let turn = 0; turn < 18; turn++) {
    const name = names[turn % names.length] as string;
    const change = { [name]: states[(turn * 5 + 1) % states.length] as string };
    const { out } = await plica('watch', { files, changes: [change, { 'probe.plica': '' }] });
    Object.assign(files, change);
    const { out: whole } = await plica('check --format line', { files });
    const others = /^(\d+) findings? in \d+ other/m.exec(out.split('probe.plica is new\n')[1] ?? '');
    expect(Number(others?.[1] ?? 0)).toBe(whole.split('\n').length - 1);
  }
});

describe('with --out', () => {
  test('the envelopes of what was checked again are built; one with an error is not', {
    timeout: 30_000,
  }, async () => {
    const files = { 'a.plica': SOUND, 'b.plica': GAPING };
    const { err, files: after } = await plica('watch --out out --page a4', {
      files,
      changes: [{ 'b.plica': SOUND.replace('half-letter', 'ebb') }],
    });
    const [, ...wrote] = err.split('wrote ');
    expect(wrote.map((line) => line.split('.')[0])).toEqual(['out/half-letter', 'out/ebb']);
    expect([...after.keys()].filter((path) => path.includes('gaping'))).toEqual([]);
  });

  test('recipes in the output folder are not looked at', async () => {
    const files = { 'a.plica': SOUND, 'out/b.plica': GAPING };
    expect(await watch(files, [], '--out out')).toBe(FIRST);
  });

  test('a folder that cannot be written is said, and the watch goes on', async () => {
    const { code, out, err } = await plica('watch --out out', {
      files: { 'a.plica': SOUND },
      changes: [{ 'a.plica': GAPING }],
      unwritable: 'permission denied',
    });
    expect(code).toBe(0);
    expect(err).toContain('out cannot be written: permission denied');
    expect(out).toContain('error[creases-cross]');
  });
});

test.each([
  ['watch -', 'standard input cannot be watched; give a file or a folder'],
  ['watch a.plca', 'a.plca: there is no such file or folder; did you mean `a.plica`?'],
  ['watch --page a4', '`--page` is about what is built; say where to, as in `--out out`'],
  ['watch --out out --margin 6', '`--margin` is a length with its unit, as `6mm` or `1/4in`, not `6`'],
])('plica %s is refused', async (line, said) => {
  const { code, out, err } = await plica(line, { files: { 'a.plica': SOUND } });
  expect({ code, out, err }).toEqual({ code: 2, out: '', err: `plica: ${said}\n` });
});
