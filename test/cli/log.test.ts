import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { expect, test } from 'vitest';
import { run } from '../../src/cli/run.js';
import { plicaIn } from '../support/program.js';
import { dayText, repositoryAt, type ScratchRepository, scratchRepository } from '../support/repository.js';
import { scratch } from '../support/scratch.js';

const HOUSE = 'units in\n\nstyle house {\n  seam: 1/2\n}\n';
/** Long enough that a line more or less leaves the file alike, as git counts it. */
const COMMENT = `# ${'Cards for the tide tables of the island, folded once. '.repeat(3)}\n`;
const TIDES = `${COMMENT}units in\n\nuse "house.plica"\n\nenvelope half-letter like house {\n  card: 8 1/2 x 5 1/2\n}\n`;

const stated = (name: string, ...lines: readonly string[]): string =>
  `${COMMENT}units in\n\nenvelope ${name} {\n  card: 8 1/2 x 5 1/2\n${lines.map((line) => `  ${line}\n`).join('')}}\n`;

interface Printed {
  readonly changes: readonly {
    readonly commit: { readonly subject: string; readonly hash: string } | null;
    readonly file: string;
    readonly isFirst: boolean;
    readonly isCutOff: boolean;
    readonly reason: string | null;
    readonly change: {
      readonly kind: string;
      readonly name: string;
      readonly consequences: readonly string[];
      readonly figures: readonly {
        readonly name: string;
        readonly before: unknown;
        readonly after: unknown;
      }[];
    };
  }[];
}

async function printed(repository: ScratchRepository, operand: string, folder = '.'): Promise<Printed> {
  const { code, out, err } = await plicaIn(repository, ['log', operand, '--format', 'json'], folder);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  return JSON.parse(out) as Printed;
}

/** `Subject: kind name`, or its consequences in the place of `changed`. */
const summary = async (repository: ScratchRepository, operand: string, folder?: string) =>
  (await printed(repository, operand, folder)).changes.map(
    ({ commit, isFirst, change: { kind, name, consequences } }) =>
      `${commit?.subject ?? '-'}: ${isFirst ? 'first ' : ''}${kind === 'changed' ? consequences.join(', ') : kind} ${name}`,
  );

const said = (repository: ScratchRepository, ...args: readonly string[]) =>
  plicaIn(repository, ['log', ...args]);

/*
 * A face of 8 3/4 x 5 3/4 in (card and 1/4 in of ease) stands at 45 degrees in the blank. Its side is
 * (8.75 + 5.75)/sqrt 2 + 2 seams: 11.253 in with seams of 1/2 in, 11.753 in with 3/4 in; a mark is a side of the face/sqrt 2
 * + 2 seams: 5.066 and 7.187 in, 5.566 and 7.687 in. The ruler reads them to 1/16 in.
 */
test('a style in another file: what follows on paper, by commit', async () => {
  const repository = scratchRepository();
  repository.commit('Recipes for the tide tables', { 'tides.plica': TIDES, 'house.plica': HOUSE });
  repository.commit('A list of printers', { 'printers.txt': 'none yet' });
  const second = repository.commit('Wider seams', { 'house.plica': HOUSE.replace('1/2', '3/4') });
  const { code, out, err } = await said(repository, 'tides.plica#half-letter');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const [wider, first, ...others] = out.split('\n\n').map((entry) => entry.split('\n'));
  expect(others).toEqual([]);
  expect(wider?.slice(0, 6)).toEqual([
    `${dayText(3)}  ${second.slice(0, 8)}  Wider seams`,
    '  half-letter: recut, rescore',
    '    tides.plica:6',
    '    Cut anew: the blank is another one.',
    '    written',
    '      seam  1/2 → 3/4  style house, house.plica:4',
  ]);
  const lines = wider?.map((line) => line.trim().replaceAll(/ +/g, ' '));
  expect(lines).toContain('blank 11 1/4 in → 11 3/4 in +1/2 in (+12.7 mm)');
  expect(lines).toContain('side mark 5 1/16 in → 5 9/16 in +1/2 in (+12.7 mm)');
  expect(lines).toContain('seal mark 7 3/16 in → 7 11/16 in +1/2 in (+12.7 mm)');
  expect(first?.slice(1)).toEqual([
    '  half-letter: added',
    '    tides.plica:6',
    '    First stated: blank 11 1/4 in; side mark 5 1/16 in; seal mark 7 3/16 in;',
    '    bottom mark 7 3/16 in; face, width 8.75 in; face, height 5.75 in.',
    '',
  ]);
});

test('a style in another file that is not committed yet', async () => {
  const repository = scratchRepository();
  repository.commit('Stated', { 'tides.plica': TIDES, 'house.plica': HOUSE });
  repository.put({ 'house.plica': HOUSE.replace('1/2', '3/4') });
  expect(await summary(repository, 'half-letter')).toEqual([
    '-: recut, rescore half-letter',
    'Stated: first added half-letter',
  ]);
});

test('what leaves the envelope as it is, is not told', async () => {
  const repository = scratchRepository();
  const other = 'envelope other {\n  card: A6\n}\n';
  repository.commit('Both', { 'a.plica': stated('tides') + other });
  repository.commit('Layout', { 'a.plica': stated('tides').replace('card: 8 1/2', 'card:   8.5') + other });
  repository.commit('The other', { 'a.plica': stated('tides') + other.replace('A6', 'A5') });
  repository.commit('A third, elsewhere', { 'b.plica': 'envelope third { card: A6 }\n' });
  expect(await summary(repository, 'a.plica#tides')).toEqual(['Both: first added tides']);
});

test('the file is followed through renames, and so is the envelope', async () => {
  const repository = scratchRepository();
  const { commit } = repository;
  commit('Stated', { 'tides.plica': stated('half-letter') });
  commit('Moved', { 'tides.plica': null, 'cards/tides.plica': stated('half-letter') });
  commit('Named', { 'cards/tides.plica': stated('tides') });
  commit('Title', { 'cards/tides.plica': stated('tides', 'title: "Tides"') });
  const told = ['Title: wording tides', 'Named: renamed tides', 'Stated: first added half-letter'];
  expect(await summary(repository, 'cards/tides.plica#tides')).toEqual(told);
  expect(await summary(repository, '../cards/tides.plica#tides', 'cards')).toEqual(told);
  const { changes } = await printed(repository, 'tides.plica#tides', 'cards');
  expect(changes.map(({ file }) => file)).toEqual(['tides.plica', 'tides.plica', '../tides.plica']);
  const { out } = await said(repository, 'cards/tides.plica#tides');
  expect(out).toContain('  tides (was half-letter): renamed');
  // By its former name, and by the file's.
  expect(await summary(repository, 'cards/tides.plica#half-letter')).toEqual([
    'Named: renamed tides',
    'Stated: first added half-letter',
  ]);
  expect(await summary(repository, 'tides.plica#half-letter')).toEqual([
    'Moved: removed half-letter',
    'Stated: first added half-letter',
  ]);
});

test('a state with mistakes is told once and passed over', async () => {
  const repository = scratchRepository();
  const { commit } = repository;
  commit('One', { 'a.plica': stated('tides', 'seam: 1/2'), 'house.plica': HOUSE });
  commit('Slip', { 'a.plica': stated('tides', 'seam: 1/2').replace('}', '') });
  commit('Meanwhile', { 'house.plica': HOUSE.replace('1/2', '3/4') });
  commit('Mended', { 'a.plica': stated('tides', 'seam: 1/2') });
  commit('No paper', { 'a.plica': stated('tides', 'seam: 1/2', 'paper: laid') });
  commit('Wider', { 'a.plica': stated('tides', 'seam: 3/4') });
  commit('Not text', { 'a.plica': Uint8Array.of(0x75, 0xff, 0x0a) });
  const { changes } = await printed(repository, 'a.plica#tides');
  expect(changes.map(({ commit: at, reason }) => [at?.subject, reason])).toEqual([
    ['Not text', 'a.plica: line 1 is not UTF-8; save the file as UTF-8'],
    ['Wider', null],
    ['No paper', expect.stringMatching(/^a\.plica:7:10: .*`laid`/)],
    ['Slip', expect.stringMatching(/^a\.plica:\d+:\d+: .*is not closed$/)],
    ['One', null],
  ]);
  const wider = changes[1]?.change;
  expect(wider?.consequences).toEqual(['recut', 'rescore']);
  expect(wider?.figures).toContainEqual({
    name: 'blank',
    dimension: 'length',
    before: [285.75],
    after: [298.45],
  });
  const { out } = await said(repository, 'a.plica#tides');
  expect(out).toContain(
    '  tides: cannot be read\n    It could not be read at this point: a.plica: line 1 is not UTF-8;',
  );
});

test('an envelope that is renamed where a mistake is mended is still followed', async () => {
  const repository = scratchRepository();
  const { commit } = repository;
  commit('One', { 'a.plica': stated('half-letter') });
  commit('Slip', { 'a.plica': stated('half-letter').replace('}', '') });
  commit('Mended and named', { 'a.plica': stated('tides') });
  expect(await summary(repository, 'a.plica#tides')).toEqual([
    'Mended and named: renamed tides',
    'Slip: unreadable half-letter',
    'One: first added half-letter',
  ]);
});

test('what could not be read at first comes before what is first stated', async () => {
  const repository = scratchRepository();
  repository.commit('Slip', { 'a.plica': stated('tides').replace('}', '') });
  repository.commit('Mended', { 'a.plica': stated('tides') });
  expect(await summary(repository, 'a.plica#tides')).toEqual([
    'Mended: first added tides',
    'Slip: unreadable tides',
  ]);
});

test('of a mistake in another envelope nothing is said, nor before there was one', async () => {
  const repository = scratchRepository();
  const { commit } = repository;
  const cardless = 'envelope other { title: "No card" }\n';
  commit('Other', { 'a.plica': COMMENT + cardless });
  commit('Stated', { 'a.plica': stated('tides') + cardless });
  expect(await summary(repository, 'a.plica#tides')).toEqual(['Stated: first added tides']);
});

test('a revert: the figures go back', async () => {
  const repository = scratchRepository();
  const { commit, git } = repository;
  commit('Stated', { 'a.plica': stated('tides', 'seam: 1/2') });
  commit('Wider', { 'a.plica': stated('tides', 'seam: 3/4') });
  git('revert', '--no-edit', 'HEAD');
  const { changes } = await printed(repository, 'a.plica#tides');
  const blanks = changes.map(({ change }) => change.figures.find(({ name }) => name === 'blank'));
  expect(blanks).toMatchObject([
    { before: [298.45], after: [285.75] },
    { before: [285.75], after: [298.45] },
    { before: [null], after: [285.75] },
  ]);
  expect(changes[0]?.commit?.subject).toBe('Revert "Wider"');
});

/** Two branches: one widens the seams, one gives a title; then they meet. */
function branched(): ScratchRepository {
  const repository = scratchRepository();
  const { commit, git } = repository;
  commit('Base', { 'a.plica': stated('tides', 'seam: 1/2') });
  git('checkout', '--quiet', '-b', 'winter');
  commit('Winter', { 'a.plica': stated('tides', 'seam: 3/4') });
  git('checkout', '--quiet', 'main');
  return repository;
}

test('a merge is told only where the envelope is as in none of its parents', async () => {
  const repository = branched();
  const { commit, git } = repository;
  commit('Elsewhere', { 'b.plica': stated('other') });
  git('merge', '--quiet', '--no-ff', '-m', 'Bring winter', 'winter');
  expect(await summary(repository, 'a.plica#tides')).toEqual([
    'Winter: recut, rescore tides',
    'Base: first added tides',
  ]);
});

test('a merge that settles a conflict is compared with its first parent', async () => {
  const repository = branched();
  const { commit, git, put } = repository;
  commit('Summer', { 'a.plica': stated('tides', 'seam: 7/16') });
  expect(() => git('merge', '--quiet', '--no-ff', 'winter')).toThrow();
  put({ 'a.plica': stated('tides', 'seam: 5/8') });
  git('add', '--all');
  git('commit', '--quiet', '-m', 'Between them');
  const { changes } = await printed(repository, 'a.plica#tides');
  const [between] = changes;
  expect(changes.map(({ commit: at }) => at?.subject)).toEqual(['Between them', 'Summer', 'Winter', 'Base']);
  // (8.75 + 5.75)/sqrt 2 + 4 * 7/16 - 2 * 7/16 = 11.128 in, read as 11 1/8; with 5/8: 11.503 in, read as 11 1/2.
  expect(between?.change.figures.find(({ name }) => name === 'blank')).toMatchObject({
    before: [11.125 * 25.4],
    after: [11.5 * 25.4],
  });
});

test('while a merge is in progress, the conflict is not committed yet and cannot be read', async () => {
  const repository = branched();
  repository.commit('Summer', { 'a.plica': stated('tides', 'seam: 7/16') });
  expect(() => repository.git('merge', '--quiet', '--no-ff', 'winter')).toThrow();
  expect(await summary(repository, 'a.plica#tides')).toEqual([
    '-: unreadable tides',
    'Summer: recut, rescore tides',
    'Base: first added tides',
  ]);
});

test('an envelope that was removed and came back', async () => {
  const repository = scratchRepository();
  const { commit } = repository;
  const other = 'envelope other {\n  card: A6\n}\n';
  commit('Both', { 'a.plica': stated('tides') + other });
  commit('No tides', { 'a.plica': COMMENT + other });
  commit('Tides again', { 'a.plica': stated('tides', 'seam: 3/4') + other });
  commit('No file', { 'a.plica': null });
  expect(await summary(repository, 'a.plica#tides')).toEqual([
    'No file: removed tides',
    'Tides again: added tides',
    'No tides: removed tides',
    'Both: first added tides',
  ]);
  const { out } = await said(repository, 'a.plica#tides');
  expect(out.match(/(Stated again|First stated): blank [^;]+/g)).toEqual([
    'Stated again: blank 11 3/4 in',
    'First stated: blank 11 1/4 in',
  ]);
});

test('what is not committed yet comes first', async () => {
  const repository = scratchRepository();
  repository.commit('Stated', { 'a.plica': stated('tides'), 'sub/b.plica': stated('other') });
  expect(await summary(repository, 'a.plica#tides')).toEqual(['Stated: first added tides']);
  repository.put({ 'a.plica': stated('tides', 'seam: 3/4') });
  expect(await summary(repository, '../a.plica#tides', 'sub')).toEqual([
    '-: recut, rescore tides',
    'Stated: first added tides',
  ]);
  repository.git('add', 'a.plica');
  const { out } = await said(repository, 'a.plica#tides', '--most', '1');
  expect(out).toMatch(/^not committed yet\n  tides: recut, rescore\n/);
  expect(out.split('\n\n')).toHaveLength(1);
  repository.put({ 'a.plica': null });
  expect(await summary(repository, 'a.plica')).toEqual(['-: removed tides', 'Stated: first added tides']);
});

const HOSTILE = '\u001b[31mred\u001b[0m \u202eesrever\u202c \u0007<b>"quoted"</b> 潮 --help';

test('a hostile subject is shown, and does nothing', async () => {
  const repository = scratchRepository();
  repository.commit(`${HOSTILE}\n\nIts text is not shown.`, { 'a.plica': stated('tides') });
  const { out } = await said(repository, 'a.plica#tides', '--color', 'never');
  expect(out.split('\n').slice(0, 3).join(' ')).toContain('\\u{1b}[31mred\\u{1b}[0m \\u{202e}esrever');
  expect(out).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/);
  expect(out).not.toContain('not shown');
  expect((await printed(repository, 'a.plica#tides')).changes[0]?.commit?.subject).toBe(HOSTILE);
  expect((await said(repository, 'a.plica#tides', '--format', 'json')).out).not.toMatch(
    /[\p{Cf}\u007f-\u009f]/u,
  );
});

test('a long subject hangs beneath its beginning, and no line is too long', async () => {
  const repository = scratchRepository();
  repository.commit('Wider seams for the winter '.repeat(8).trim(), { 'a.plica': stated('tides') });
  const { out } = await said(repository, 'a.plica#tides');
  const lines = out.split('\n');
  expect(lines[1]).toMatch(/^ {22}\S/);
  expect(Math.max(...lines.map(({ length }) => length))).toBeLessThanOrEqual(80);
});

test.each([
  'tide tables #1.plica',
  'a folder # of/cards.plica',
  '#.plica',
  '-x.plica',
  ':(top).plica',
  'Ebbe & Flut "neu".plica',
])('a file named %j', async (path) => {
  const repository = scratchRepository();
  repository.commit('Stated', { [path]: stated('tides') + 'envelope other { card: A6 }\n' });
  const operand = path.startsWith('-') ? `./${path}` : path;
  expect(await summary(repository, `${operand}#tides`)).toEqual(['Stated: first added tides']);
  const { err } = await said(repository, operand);
  expect(err).toBe(
    `plica: ${operand} has several envelopes; name one of them: \`${operand}#tides\`, \`${operand}#other\`\n`,
  );
});

test('a path alone, and a name alone, where they say enough', async () => {
  const repository = scratchRepository();
  repository.commit('Stated', { 'a.plica': stated('tides'), 'cards/b.plica': stated('ebb') });
  expect(await summary(repository, 'a.plica')).toEqual(['Stated: first added tides']);
  expect(await summary(repository, 'ebb')).toEqual(['Stated: first added ebb']);
  expect(await summary(repository, '#ebb')).toEqual(['Stated: first added ebb']);
  repository.put({ 'cards/c.plica': stated('ebb') });
  expect(await said(repository, 'ebb')).toEqual({
    code: 2,
    out: '',
    err: 'plica: several files have an envelope `ebb`; name one of them: `cards/b.plica#ebb`, `cards/c.plica#ebb`\n',
  });
});

test.each([
  ['a.plica#tide', 'a.plica never had an envelope `tide`; did you mean `tides`?'],
  ['a.plica#quite-another', 'a.plica never had an envelope `quite-another`'],
  ['tide', 'no recipe in this folder has an envelope `tide`; did you mean `tides`?'],
  ['\u001b[2J', 'no recipe in this folder has an envelope `\\u{1b}[2J`'],
  ['a.plica#', 'no recipe'],
  ['new.plica#tides', 'new.plica: no commit of this branch has it'],
  ['never.plica#tides', 'never.plica: no commit of this branch has it'],
  ['notes.txt#tides', 'notes.txt: this is no recipe file (*.plica)'],
  ['../a.plica#tides', '../a.plica: it is not in this repository'],
  ['empty.plica', 'empty.plica: no envelope can be read in it; name one, as in `empty.plica#NAME`'],
])('%j: that is said', async (operand, reason) => {
  const repository = scratchRepository();
  repository.commit('Stated', { 'a.plica': stated('tides'), 'notes.txt': '', 'empty.plica': 'units mm\n' });
  repository.put({ 'new.plica': stated('tides') });
  if (operand === 'a.plica#') {
    expect(await summary(repository, operand)).toEqual(['Stated: first added tides']);
    return;
  }
  expect(await said(repository, operand)).toEqual({ code: 2, out: '', err: `plica: ${reason}\n` });
});

test('where there is no history to go back through, that is said', async () => {
  const folder = repositoryAt(scratch({ 'a.plica': stated('tides') }));
  const wrong = (err: string) => ({ code: 2, out: '', err: `plica: ${err}\n` });
  expect(await said(folder, 'a.plica')).toEqual(wrong('this folder is in no git repository'));
  const repository = scratchRepository();
  repository.put({ 'a.plica': stated('tides') });
  expect(await said(repository, 'a.plica')).toEqual(wrong('nothing has been committed here yet'));
  repository.commit('Stated');
  for (const most of ['0', '-1', 'all', '1.5', '']) {
    const { code, err } = await said(repository, 'a.plica', `--most=${most}`);
    expect([most, code, err]).toEqual([
      most,
      2,
      expect.stringMatching(/^plica: `--most` wants a (number from 1|value)/),
    ]);
  }
});

test('a bare repository has a history, and no work tree', async () => {
  const origin = scratchRepository();
  origin.commit('Stated', { 'a.plica': stated('tides') });
  const bare = join(scratch(), 'bare');
  origin.git('clone', '--quiet', '--bare', `file://${origin.top}`, bare);
  expect(await summary(repositoryAt(bare), 'a.plica#tides')).toEqual(['Stated: first added tides']);
});

test('a shallow clone says where it ends', async () => {
  const origin = scratchRepository();
  origin.commit('Read me', { 'README.txt': 'Recipes of the studio' });
  origin.commit('Stated', { 'a.plica': stated('tides') });
  origin.commit('Wider', { 'a.plica': stated('tides', 'seam: 3/4') });
  origin.commit('Title', { 'a.plica': stated('tides', 'seam: 3/4', 'title: "Tides"') });
  const clone = join(scratch(), 'clone');
  origin.git('clone', '--quiet', '--depth=2', `file://${origin.top}`, clone);
  const { changes } = await printed(repositoryAt(clone), 'a.plica#tides');
  expect(changes.map(({ commit, isFirst, isCutOff }) => [commit?.subject, isFirst, isCutOff])).toEqual([
    ['Title', false, false],
    ['Wider', true, true],
  ]);
  const { out } = await said(repositoryAt(clone), 'a.plica#tides');
  expect(out).toContain('    As far back as this shallow clone goes: blank 11 3/4 in;');
  // Where it begins by itself, there is a commit before it too.
  expect((await printed(origin, 'a.plica#tides')).changes.at(-1)).toMatchObject({
    isFirst: true,
    isCutOff: false,
  });
});

test('it ends after as many changes as are wanted, or when nobody reads on', async () => {
  const repository = scratchRepository();
  for (const seam of ['1/2', '5/8', '3/4', '7/8'])
    repository.commit(seam, { 'a.plica': stated('tides', `seam: ${seam}`) });
  const { out } = await said(repository, 'a.plica#tides', '--most', '2');
  expect(out.match(/^2024-\S+ {2}\S+ {2}(.*)$/gm)?.map((line) => line.slice(22))).toEqual(['7/8', '3/4']);
  const written: string[] = [];
  const host = repository.host();
  const out1 = {
    ...host.out,
    write: (text: string) => void written.push(text),
    isRead: () => written.length === 0,
  };
  expect(await run(['log', 'a.plica#tides'], { ...host, out: out1 })).toBe(0);
  expect(written).toHaveLength(1);
});

test('what commits leave alone is read once, and for many of them at once', async () => {
  const repository = scratchRepository();
  repository.commit('Stated', { 'a.plica': stated('tides'), 'b.plica': stated('other') });
  for (let number = 0; number < 40; number++)
    repository.commit(`${number}`, { 'b.plica': stated('other', `title: "${number}"`) });
  const ran: string[] = [];
  const host = repository.host();
  const out = { ...host.out, write: () => {} };
  const git: typeof host.git = (args, input) => {
    ran.push(args.slice(0, 2).join(' '));
    return host.git(args, input);
  };
  expect(await run(['log', 'a.plica#tides'], { ...host, out, git })).toBe(0);
  expect(ran.filter((command) => command === 'ls-tree -r')).toHaveLength(41);
  expect(ran.length - 41).toBeLessThan(12);
});

const schemas = ['src/diff/difference.schema.json', 'src/cli/log.schema.json'].map(
  (path) => JSON.parse(readFileSync(path, 'utf8')) as object,
) as [object, object];

/** A schema, but with every field that it does not name refused. */
const closed = (schema: object): object =>
  JSON.parse(JSON.stringify(schema), (_, value: unknown) =>
    typeof value === 'object' && value !== null && 'properties' in value
      ? { ...value, additionalProperties: false }
      : value,
  ) as object;

test('the JSON keeps to the schema, and every field is in it', async () => {
  const repository = scratchRepository();
  const { commit, put } = repository;
  commit('Stated', { 'a.plica': stated('half-letter', 'tape: 1/4') });
  commit('Named', { 'a.plica': stated('tides', 'tape: 1/4') });
  commit('Gone', { 'a.plica': COMMENT });
  commit('Slip', { 'a.plica': stated('tides').replace('}', '') });
  commit('Back', { 'a.plica': stated('tides') });
  put({ 'a.plica': stated('tides', 'blank: 10') });
  const all = await printed(repository, 'a.plica#tides');
  expect(all).toMatchObject({ format: 'plica-log', version: 1, file: 'a.plica', name: 'tides' });
  expect(all.changes.map(({ change }) => change.kind)).toEqual([
    'changed',
    'added',
    'unreadable',
    'removed',
    'renamed',
    'added',
  ]);
  for (const [difference, log] of [schemas, schemas.map(closed)] as [object, object][]) {
    const ajv = new Ajv({ allErrors: true, allowUnionTypes: true });
    ajv.addSchema(difference, 'difference.schema.json');
    ajv.validate(log, all);
    expect(ajv.errors).toBeNull();
    ajv.validate(log, { ...all, version: 2, changes: [{ ...all.changes[0], commit: 'HEAD' }] });
    expect(ajv.errors?.map(({ instancePath }) => instancePath)).toEqual(['/version', '/changes/0/commit']);
  }
});
