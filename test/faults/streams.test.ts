/* Standard streams that are closed, or that nobody reads to the end. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { scratch } from '../support/scratch.js';
import { envelope, GAPING, SOUND } from './recipes.js';
import { expectPlainWords, shell } from './run-built.js';

/** So many envelopes that what is said of them is longer than a pipe holds (64 KiB on Linux). */
const MANY = `units in\n${Array.from({ length: 60 }, (_, index) => `\n${envelope(`tide-${index}`, `${3 + index / 16} x 4`)}`).join('')}`;
const WRONG = `units in\n${'\nenvelope gaping { card: moon }\n'.repeat(300)}`;

test.each([
  ['show many.plica', 0],
  ['show many.plica --format json', 0],
  ['check wrong.plica', 1],
  ['check wrong.plica --format line', 1],
  ['check wrong.plica --format json', 1],
  ['check wrong.plica --format sarif', 1],
  ['diff empty.plica many.plica', 1],
  ['diff empty.plica many.plica --format html', 1],
  ['explain', 0],
  ['--help', 0],
])('`plica %s | head -1` says one line, and no more', (args, code) => {
  const folder = scratch({ 'many.plica': MANY, 'wrong.plica': WRONG, 'empty.plica': 'units in\n' });
  const { out, err } = shell(folder, `plica ${args} | head -1; echo "ended with \${PIPESTATUS[0]}"`);
  const [first, last, ...more] = out.trimEnd().split('\n');
  expect(first).not.toBe('');
  expect(last).toBe(`ended with ${code}`);
  expect(more).toEqual([]);
  expect(err).toBe('');
});

test.each([
  ['build a.plica --emit svg --out out', 'out/half-letter.svg'],
  ['catalogue . --out out/tides.csv', 'out/tides.csv'],
])('`plica %s 2>&1 | true` writes its files all the same', (args, file) => {
  const folder = scratch({ 'a.plica': SOUND });
  const { code, err } = shell(folder, `plica ${args} 2>&1 | true; exit "\${PIPESTATUS[0]}"`);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(readdirSync(join(folder, 'out'))).toContain(file.split('/')[1]);
});

/** Shells that have no terminal any more hand on closed streams. */
const CLOSED = ['>&-', '2>&-', '<&-', '>&- 2>&-', '<&- >&- 2>&-'];

test.each(CLOSED)('`plica check %s` and `show %s` end as ever, without a stack', (closed) => {
  const folder = scratch({ 'a.plica': SOUND });
  for (const command of ['check', 'show']) {
    const ran = shell(folder, `plica ${command} a.plica ${closed}`);
    expect(ran.code).toBe(0);
    expectPlainWords(ran);
  }
});

test.each(CLOSED)('`plica build %s` writes its files', (closed) => {
  const folder = scratch({ 'a.plica': SOUND });
  const ran = shell(folder, `plica build a.plica --emit svg --out out ${closed}`);
  expect(ran.code).toBe(0);
  expectPlainWords(ran);
  expect(readdirSync(join(folder, 'out'))).toEqual(['half-letter.svg']);
});

test('a recipe asked for from a closed standard input is an empty one; nobody waits for it', () => {
  const folder = scratch();
  const said = 'nothing wrong in 1 file, but no envelope in it either\n';
  for (const from of ['<&-', '< /dev/null'])
    expect(shell(folder, `plica check - ${from}`)).toEqual({ code: 0, out: said, err: '' });
});

test.skipIf(process.platform === 'win32')('a folder as standard input is refused', () => {
  const said = { code: 2, out: '', err: 'plica: <stdin>: it is a folder\n' };
  for (const command of ['check', 'show']) expect(shell(scratch(), `plica ${command} - < .`)).toEqual(said);
});

test.skipIf(process.platform !== 'linux').each([
  ['check nowhere', 2],
  ['check a.plica', 0],
  ['check b.plica', 1],
  ['build a.plica --emit svg --out out', 0],
  ['no-such-command', 2],
])('`plica %s` ends as ever where standard error is full', (args, code) => {
  const folder = scratch({ 'a.plica': SOUND, 'b.plica': GAPING });
  expect(shell(folder, `plica ${args} 2> /dev/full`)).toMatchObject({ code, err: '' });
});

const hasTerminals = shell('/', 'script -qec true /dev/null').code === 0;

test.skipIf(!hasTerminals)('a terminal that is closed meanwhile is no error (asks for `script`)', () => {
  const folder = scratch({
    'a.plica': SOUND,
    'later.sh': `trap '' HUP
      (sleep 1; "$NODE" "$PROGRAM" show a.plica 2> said; echo "ended with $?" > code; mv code ended) &`,
  });
  const script =
    "script -qec 'bash later.sh' /dev/null; until [ -e ended ]; do sleep 0.1; done; cat said ended";
  expect(shell(folder, script)).toMatchObject({ code: 0, out: expect.stringMatching(/^\s*ended with 0\n$/) });
});
