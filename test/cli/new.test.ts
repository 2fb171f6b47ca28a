import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { nodeHost } from '../../src/host/node-host.js';
import { plica, SOUND } from '../support/command-line.js';
import { scratch } from '../support/scratch.js';

test.each(['mm', 'cm', 'in'])('a new recipe in %s has no finding and is in the layout', async (units) => {
  const { code, out, err, files } = await plica(`new tide-card --units ${units}`);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toBe('wrote tide-card.plica; next: change its card, and run `plica check tide-card.plica`\n');
  const text = new TextDecoder().decode(files.get('/studio/tide-card.plica'));
  const made = { files: { 'tide-card.plica': text } };
  expect(await plica('check --strict', made)).toMatchObject({
    code: 0,
    out: 'nothing wrong in 1 envelope of 1 file\n',
  });
  expect(await plica('format --check', made)).toMatchObject({ code: 0, out: '' });
  const expecting = text.replace('# expect', 'expect');
  expect(await plica('check --strict', { files: { 'a.plica': expecting } })).toMatchObject({ code: 0 });
  expect(text).toContain(`units ${units}\n`);
});

test.each(['let', 'expect', 'envelope', 'like', 'mm', 'card', 'end', 'b'.repeat(60)])(
  'a recipe may be named %s, as a word of the language or as long as a word may be',
  async (name) => {
    const { files } = await plica(`new ${name}`);
    const text = new TextDecoder().decode(files.get(`/studio/${name}.plica`));
    expect(await plica('check --strict', { files: { 'a.plica': text } })).toMatchObject({ code: 0 });
  },
);

test('its ending may be typed, and folders that are there', async () => {
  const { files } = await plica('new cards/ebb.plica', { folders: ['cards'] });
  expect([...files.keys()]).toEqual(['/studio/cards/ebb.plica']);
});

test.each([
  ['Tide', '`Tide` is no name; names are lower case words with hyphens between; it could be `tide`'],
  ['5x7', '`5x7` is no name; names are lower case words with hyphens between; it could be `card-5x7`'],
  [
    'tide_card',
    '`tide_card` is no name; names are lower case words with hyphens between; it could be `tide-card`',
  ],
  ['A6', '`A6` is the name of a size; it could be `card-a6`'],
  ['X', '`X` is no name; names are lower case words with hyphens between; it could be `card-x`'],
  ['_', '`_` is no name; names are lower case words with hyphens between; it could be `card`'],
  ['text', '`text` is the name of its paper; it could be `card-text`'],
  [
    'tide-'.repeat(13) + 'card',
    `\`${'tide-'.repeat(13)}card\` is too long; a name has at most 60 letters; it could be \`${'tide-'.repeat(11).slice(0, -1)}\``,
  ],
  ['a6', '`a6` is the name of a size; it could be `card-a6`'],
  ['letter', '`letter` is the name of a size; it could be `card-letter`'],
  ['x', '`x` is the sign between the sides of a size; it could be `card-x`'],
  ['drawer/ebb', 'there is no folder `drawer`; make it first'],
  ['half-letter', '`half-letter` is an envelope already, at a.plica:3:10; choose another name'],
  [
    '\u001b[2J',
    '`\\u{1b}[2J` is no name; names are lower case words with hyphens between; it could be `card-2j`',
  ],
  ['a', 'a.plica is there already, and stays as it is'],
])('new %j is refused, and nothing is written', async (name, said) => {
  const { code, out, err, files } = await plica(`new ${name}`, { files: { 'a.plica': SOUND } });
  expect({ code, out, err }).toEqual({ code: 2, out: '', err: `plica: ${said}\n` });
  expect([...files.keys()]).toEqual(['/studio/a.plica']);
});

test('on a disk, a file that is there stays as it is', () => {
  const folder = scratch({ 'a.plica': 'mine' });
  const host = nodeHost();
  expect(host.create(join(folder, 'a.plica'), Uint8Array.of(0x78))).toEqual({
    kind: 'unwritable',
    path: join(folder, 'a.plica'),
    reason: 'a file is in its place',
  });
  expect(readFileSync(join(folder, 'a.plica'), 'utf8')).toBe('mine');
  expect(host.create(join(folder, 'b.plica'), Uint8Array.of(0x78))).toEqual({ kind: 'written' });
  expect(readFileSync(join(folder, 'b.plica'), 'utf8')).toBe('x');
  writeFileSync(join(folder, 'file'), '');
  expect(host.create(join(folder, 'file/c.plica'), Uint8Array.of())).toMatchObject({ kind: 'unwritable' });
});
