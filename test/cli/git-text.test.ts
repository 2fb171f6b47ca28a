import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { GAPING, plica, SOUND } from '../support/command-line.js';
import { gitWithPlica, plicaIn } from '../support/program.js';
import { type ScratchRepository, scratchRepository } from '../support/repository.js';
import { scratch } from '../support/scratch.js';

const HOUSE = (ease: string): string => `units in\n\nstyle house {\n  ease: ${ease}\n}\n`;
const CARD = (width: string): string =>
  `units in\n\nuse "house.plica"\n\nenvelope half-letter like house {\n  card: ${width} x 5 1/2\n}\n`;

/** The comments beneath a recipe's text. */
const beneath = (out: string): readonly string[] =>
  (out.split('\n# on paper\n')[1] ?? '').split('\n').slice(0, -1);

test('a recipe’s text, and beneath it a line for each figure', async () => {
  const { code, out, err } = await plica('git-text a.plica', { files: { 'a.plica': SOUND } });
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out.startsWith(`${SOUND}\n# on paper\n`)).toBe(true);
  // The half-letter card's figures by hand: see test/drawing and specs/tide-tables.plica, which expects them.
  expect(beneath(out)).toContain('# half-letter: blank 11 1/4 in');
  expect(beneath(out)).toContain('# half-letter: side mark 5 1/16 in');
  expect(beneath(out)).toContain('# half-letter: seal mark 7 3/16 in');
  expect(new Set(beneath(out)).size).toBe(beneath(out).length);
});

test('what is wrong stands with the figures, without the lines that any edit would move', async () => {
  const first = await plica('git-text a.plica', { files: { 'a.plica': GAPING } });
  const moved = await plica('git-text a.plica', { files: { 'a.plica': `# A word.\n\n\n${GAPING}` } });
  expect(first.code).toBe(0);
  expect(beneath(first.out).filter((line) => line.includes('error['))).toEqual([
    '# gaping: error[creases-cross]: the scores of gaping do not cross, so its back would gape',
  ]);
  expect(beneath(moved.out)).toEqual(beneath(first.out));
});

/** What is no good recipe, and what stands beneath its text; it ends with 0 all the same. */
const BAD: readonly (readonly [what: string, content: string | Uint8Array, said: RegExp])[] = [
  ['slips', 'units in\nenvelope a { card: }\n', /^# error\[syntax\]: /],
  ['a name that nobody gave', 'envelope a like nobody { card: A6 }\n', /^# error\[unknown-name\]: /],
  ['not UTF-8', Uint8Array.of(0x23, 0xe9, 0x0a), /^# line 1 is not UTF-8/],
  ['UTF-16', Uint8Array.of(0xff, 0xfe, 0x23, 0), /^# it is UTF-16/],
  ['as long as a book', `# ${'tide '.repeat(250_000)}\n`, /^# it is longer than 1000000 bytes/],
  ['anything', Uint8Array.from({ length: 4096 }, (_, index) => (index * 89) % 256), /^# line 1 is not UTF-8/],
];

test.each(BAD)('a bad recipe is text all the same: %s', async (_, content, said) => {
  const { code, out, err } = await plica('git-text a.plica', { files: { 'a.plica': content } });
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(beneath(out)[0]).toMatch(said);
});

test('an empty file is an empty text; what is not there is trouble', async () => {
  expect(await plica('git-text a.plica', { files: { 'a.plica': '' } })).toMatchObject({ code: 0, out: '' });
  expect(await plica('git-text a.plica')).toMatchObject({
    code: 2,
    out: '',
    err: 'plica: a.plica: there is no such file or folder\n',
  });
});

test('what would do something to a terminal is spelled out; tabs and line ends stay', async () => {
  const text = 'units in\r\n\t# \u001b[2Jgone \u202e\r\n# over\rwritten\n';
  const { out } = await plica('git-text a.plica', { files: { 'a.plica': text } });
  expect(out).toContain('units in\r\n\t# \\u{1b}[2Jgone \\u{202e}\r\n# over\\u{d}written\n');
});

/** A file laid beside the work tree, as git does with an older state. */
function handed(name: string, text: string): string {
  const path = join(scratch(), name);
  writeFileSync(path, text);
  return path;
}

const textIn = async (repository: ScratchRepository, file: string): Promise<string> =>
  (await plicaIn(repository, ['git-text', '--', file])).out;

test('what a state uses is looked for from the place of the file that is named so', async () => {
  const repository = scratchRepository();
  repository.commit('Cards', { 'cards/tide.plica': CARD('8 1/2'), 'cards/house.plica': HOUSE('1/4') });
  const blank = '# half-letter: blank 11 1/4 in';
  expect(await textIn(repository, 'cards/tide.plica')).toContain(blank);
  expect(await textIn(repository, handed('tide.plica', CARD('8 1/2')))).toContain(blank);
  expect(await textIn(repository, handed('k3JxQa_tide.plica', CARD('8 1/2')))).toContain(blank);
  repository.put({ 'cards/house.plica': HOUSE('1/2') });
  expect(await textIn(repository, handed('tide.plica', CARD('8 1/2')))).not.toContain(blank);
});

test('where it is not to be found, the figures are left out, with a word', async () => {
  const repository = scratchRepository();
  repository.commit('Cards', { 'cards/tide.plica': CARD('8 1/2'), 'cards/house.plica': HOUSE('1/4') });
  const leftOut = ['# what it uses is not to be found from here, so its figures are left out'];
  expect(beneath(await textIn(repository, handed('other.plica', CARD('8 1/2'))))).toEqual(leftOut);
  const away = CARD('8').replace('house', 'gone');
  expect(beneath(await textIn(repository, handed('tide.plica', away)))).toEqual(leftOut);
  const outside = await plica('git-text a.plica', { files: { 'a.plica': CARD('8') } });
  expect(beneath(outside.out)).toEqual(leftOut);
});

test('of several files of one name, those that agree, or the one that is staged so, are believed', async () => {
  const repository = scratchRepository();
  repository.commit('Two years', {
    '2024/tide.plica': CARD('8 1/2'),
    '2024/house.plica': HOUSE('1/4'),
    '2025/tide.plica': CARD('8'),
    '2025/house.plica': HOUSE('1/4'),
  });
  const older = handed('tide.plica', CARD('7'));
  expect(await textIn(repository, older)).toContain('# half-letter: blank ');
  repository.put({ '2025/house.plica': HOUSE('1/2') });
  expect(beneath(await textIn(repository, older))).toEqual([
    '# several files have its name and would come to other figures, so they are left out',
  ]);
  expect(await textIn(repository, handed('tide.plica', CARD('8 1/2')))).toContain(
    '# half-letter: blank 11 1/4 in',
  );
});

/** A repository that `git-setup --apply` has set up with the built program. */
function setUp(): ScratchRepository {
  const repository = scratchRepository();
  const { code } = gitWithPlica(repository, ['-c', 'alias.run=!plica git-setup --apply', 'run']);
  expect(code).toBe(0);
  return repository;
}

/** The lines that git shows as taken away, added, or at the head of a hunk. */
const changed = (out: string): readonly string[] =>
  out.split('\n').filter((line) => /^([-+](?![-+])|@@)/.test(line));

test('git diff shows figures, under the heading of the block that changed', () => {
  const repository = setUp();
  const card = (width: string): string =>
    CARD(width).replace('{\n', '{\n  title: "Tides"\n  note: "The whole year."\n  tags: tides, flat\n');
  repository.commit('A card', { 'tide.plica': card('8 1/2'), 'house.plica': HOUSE('1/4') });
  repository.put({ 'tide.plica': card('8') });
  const { code, out, err } = gitWithPlica(repository, ['diff']);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const lines = changed(out);
  expect(lines[0]).toMatch(/^@@ .* @@ envelope half-letter like house \{$/);
  expect(lines).toContain('-  card: 8 1/2 x 5 1/2');
  expect(lines).toContain('-# half-letter: blank 11 1/4 in');
  expect(lines.some((line) => line.startsWith('+# half-letter: blank '))).toBe(true);
  expect(gitWithPlica(repository, ['diff', '--no-textconv']).out).not.toContain('# half-letter');
});

test('a figure far down is shown under `on paper`', () => {
  const repository = setUp();
  const two = (card: string): string => `${SOUND}\nenvelope other { card: ${card} }\n`;
  repository.commit('Cards', { 'tide.plica': two('8 1/2 x 5 1/2') });
  repository.put({ 'tide.plica': two('8 1/2 x 5') });
  expect(gitWithPlica(repository, ['diff', '-U0']).out).toMatch(/^@@ .* @@ # on paper$/m);
});

test('git log -p and git show tell the figures of each step', () => {
  const repository = setUp();
  repository.commit('A card', { 'tide.plica': SOUND });
  repository.commit('A narrower one', { 'tide.plica': SOUND.replace('8 1/2', '8') });
  const log = gitWithPlica(repository, ['log', '-p', '--format=%s']);
  expect(log).toMatchObject({ code: 0, err: '' });
  const [narrower = '', first = ''] = log.out.split('\nA card\n');
  expect(changed(narrower)).toContain('-# half-letter: blank 11 1/4 in');
  expect(changed(first)).toContain('+# half-letter: blank 11 1/4 in');
  expect(changed(gitWithPlica(repository, ['show']).out)).toContain('-# half-letter: blank 11 1/4 in');
});

test('git diff still works where recipes are bad, gone, or no text at all', () => {
  const repository = setUp();
  repository.commit('All sorts', {
    'good.plica': SOUND,
    'gone.plica': SOUND.replace('half-letter', 'gone'),
    'binary.plica': Uint8Array.of(0, 1, 2, 255),
  });
  repository.put({
    'good.plica': 'units in\nenvelope half-letter { card: }\n',
    'binary.plica': Uint8Array.of(0, 1, 3, 255),
    'new.plica': SOUND.replace('half-letter', 'new'),
  });
  repository.git('add', '--intent-to-add', '--all');
  repository.put({ 'gone.plica': null });
  const { code, out, err } = gitWithPlica(repository, ['diff', '--no-renames']);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(changed(out).some((line) => line.startsWith('+# error[syntax]: '))).toBe(true);
  expect(changed(out)).toContain('-# gone: blank 11 1/4 in');
  expect(changed(out)).toContain('+# new: blank 11 1/4 in');
  expect(changed(out)).toContain('-\\u{0}\\u{1}\\u{2}ÿ');
});

test('names that look like something else are only names', () => {
  const repository = setUp();
  const names = [
    '-f.plica',
    '--help.plica',
    'the year/ ebb "and" flow.plica',
    "the year/o'clock $(touch x) `y`.plica",
    'the year/two\nlines.plica',
  ];
  const all = (width: string) => Object.fromEntries(names.map((name) => [name, CARD(width)]));
  const houses = { 'house.plica': HOUSE('1/4'), 'the year/house.plica': HOUSE('1/4') };
  repository.commit('Cards', { ...all('8 1/2'), ...houses });
  repository.put(all('8'));
  const { code, out, err } = gitWithPlica(repository, ['diff']);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const blanks = changed(out).filter((line) => line === '-# half-letter: blank 11 1/4 in');
  expect(blanks).toHaveLength(names.length);
  expect(repository.git('status', '--porcelain', '--untracked-files')).not.toContain('?? x');
});

test('in a folder below, `git diff --relative` tells the same figures', () => {
  const repository = setUp();
  repository.commit('Cards', { 'cards/tide.plica': CARD('8 1/2'), 'cards/house.plica': HOUSE('1/4') });
  repository.put({ 'cards/tide.plica': CARD('8') });
  const inFolder = gitWithPlica(repository, ['diff', '--relative'], { folder: 'cards' });
  expect(changed(inFolder.out)).toContain('-# half-letter: blank 11 1/4 in');
});
