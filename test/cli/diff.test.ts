import { chmodSync, lstatSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { stripVTControlCharacters } from 'node:util';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import schema from '../../src/diff/difference.schema.json' with { type: 'json' };
import { plica } from '../support/command-line.js';
import { plicaIn } from '../support/program.js';
import { repositoryAt, type ScratchRepository, scratchRepository } from '../support/repository.js';
import { scratch } from '../support/scratch.js';
import { readSvg } from '../support/svg-file.js';

const house = (ease = '1/4'): string => `units in\n\nstyle house {\n  ease: ${ease}\n}\n`;
const envelope = (name: string, ...lines: readonly string[]): string =>
  `envelope ${name} {\n  card: 8 1/2 x 5 1/2\n${lines.map((line) => `  ${line}\n`).join('')}}\n`;
const recipe = (name: string, ...lines: readonly string[]): string =>
  `units in\n\n${envelope(name, ...lines)}`;
const styled = (name: string): string =>
  `units in\n\nuse "house.plica"\n\nenvelope ${name} like house {\n  card: 8 1/2 x 5 1/2\n}\n`;
const BROKEN = 'units in\n\nenvelope tides { card: }\n';

/** The names and kinds of what changed, as the JSON has them. */
async function changed(repository: ScratchRepository, args: readonly string[], folder = '.') {
  const { code, out, err } = await plicaIn(repository, ['diff', '--format', 'json', ...args], folder);
  const { changes } = JSON.parse(out) as { changes: readonly { name: string; kind: string }[] };
  return {
    code,
    err,
    changes: changes.map(({ name, kind }) => (kind === 'changed' ? name : `${name} ${kind}`)),
  };
}

/**
 * `v1`: a card for the tides in the house style, and one for the moon. Then the house gives more ease, which is HEAD; and in
 * the work tree the card for the moon has a title.
 */
function studio(): ScratchRepository {
  const repository = scratchRepository();
  const moon = recipe('moon');
  repository.commit('First: two cards', {
    'specs/house.plica': house(),
    'specs/tides.plica': styled('tides'),
    'cards/moon.plica': moon,
  });
  repository.git('tag', 'v1');
  repository.commit('Then: more ease', { 'specs/house.plica': house('3/8') });
  repository.put({ 'cards/moon.plica': recipe('moon', 'title: "Moon"') });
  return repository;
}

const TIDES = ['tides'];
const MOON = ['moon'];
const BOTH = ['moon', 'tides'];
const NONE: readonly string[] = [];

/** What is named, from which folder, and which envelopes differ. */
const FORMS: readonly (readonly [operands: string, folder: string, changes: readonly string[]])[] = [
  ['', '.', MOON],
  ['', 'specs', MOON],
  ['HEAD', '.', MOON],
  ['HEAD:', '.', MOON],
  ['v1', '.', BOTH],
  ['v1', 'cards', BOTH],
  ['v1 HEAD', '.', TIDES],
  ['HEAD v1', '.', TIDES],
  ['HEAD HEAD', '.', NONE],
  ['cards', '.', MOON],
  ['./cards/moon.plica', '.', MOON],
  ['moon.plica', 'cards', MOON],
  ['../cards', 'specs', MOON],
  ['specs', '.', NONE],
  ['v1:specs', '.', TIDES],
  ['v1:specs', 'cards', TIDES],
  ['v1:specs/tides.plica', '.', TIDES],
  ['v1:./tides.plica', 'specs', TIDES],
  ['v1:../specs', 'cards', TIDES],
  ['v1:specs HEAD:specs', '.', TIDES],
  ['v1:specs specs', '.', TIDES],
  ['specs v1:specs', '.', TIDES],
  ['HEAD~1:specs/tides.plica specs/tides.plica', '.', TIDES],
  ['HEAD^{/First:}:specs', '.', TIDES],
  ['main@{0}', '.', MOON],
];

test('every form of the operands, from any folder', async () => {
  const repository = studio();
  for (const [operands, folder, changes] of FORMS) {
    const words = operands.split(' ').filter((word) => word !== '');
    const form = `diff ${operands} in ${folder}`;
    const code = changes.length === 0 ? 0 : 1;
    expect
      .soft({ form, ...(await changed(repository, words, folder)) })
      .toEqual({ form, code, err: '', changes });
  }
});

test('old and new: what was written comes first, and blanks as printed for that card', async () => {
  const { out } = await plicaIn(studio(), ['diff', 'v1', 'HEAD']);
  expect(out).toMatch(/ease:? +1\/4 → 3\/8/);
  // 11 1/4 in for a half-letter card: common practice, no published source
  expect(out).toMatch(/blank +11 1\/4 in → 11 \d+\/16 in/);
  expect((await plicaIn(studio(), ['diff', 'HEAD', 'v1'])).out).toMatch(/ease:? +3\/8 → 1\/4/);
});

test('two files, and two folders, with no repository and no git', async () => {
  const files = {
    'old.plica': recipe('tides'),
    'new.plica': recipe('tides', 'tags: flat'),
    'a/house.plica': house(),
    'a/tides.plica': styled('tides'),
    'b/house.plica': house('3/8'),
    'b/tides.plica': styled('tides'),
  };
  const two = await plica('diff old.plica new.plica', { files });
  expect(two).toMatchObject({ code: 1, err: '' });
  expect(two.out).toContain('1 envelope changed: 1 wording');
  expect((await plica('diff a b', { files })).out).toContain('1 envelope changed: 1 recut');
  expect(await plica('diff a a', { files })).toMatchObject({ code: 0, out: 'Nothing changed\n', err: '' });
});

test('layout, order, comments, and a length in other units are no change', async () => {
  const repository = scratchRepository();
  repository.commit('Tides', { 'tides.plica': recipe('tides', 'seam: 1/2', 'tags: flat, tides') });
  repository.put({
    'tides.plica':
      'units in\n# for the shop on the quay\n\nenvelope   tides { tags: tides, flat\n seam: 12.7 mm\n card: 5.5 x 8.5 }\n',
  });
  expect(await plicaIn(repository, ['diff'])).toEqual({ code: 0, out: 'Nothing changed\n', err: '' });
});

test('an edit in a style is told once, with all that it reaches', async () => {
  const repository = scratchRepository();
  repository.commit('Two', {
    'house.plica': house(),
    'ebb.plica': styled('ebb'),
    'flood.plica': styled('flood'),
    'moon.plica': recipe('moon'),
  });
  repository.put({ 'house.plica': house('3/8') });
  const { out } = await plicaIn(repository, ['diff']);
  expect(out).toMatch(
    /^shared: style house\n {2}Reaches ebb, flood\.\n {2}written\n {4}ease {2}1\/4 → 3\/8 {2}style house, house\.plica:4\n/,
  );
  expect(out).not.toContain('moon');
});

describe('files that only one side has', () => {
  test('their envelopes were added or removed, whichever way the place is named', async () => {
    const repository = scratchRepository();
    repository.commit('Ebb', { 'specs/ebb.plica': recipe('ebb', 'seam: 9/16') });
    repository.put({ 'specs/ebb.plica': null, 'new/flood.plica': recipe('flood') });
    const both = { code: 1, err: '', changes: ['ebb removed', 'flood added'] };
    expect(await changed(repository, [])).toEqual(both);
    for (const place of ['specs', 'specs/ebb.plica', 'HEAD:specs', 'HEAD:specs/ebb.plica'])
      expect(await changed(repository, [place])).toEqual({ ...both, changes: ['ebb removed'] });
    for (const place of ['new', 'new/flood.plica', 'HEAD:new'])
      expect(await changed(repository, [place])).toEqual({ ...both, changes: ['flood added'] });
  });

  test('the first recipe of a project, and the last', async () => {
    const repository = scratchRepository();
    repository.commit('Nothing yet', { 'README.md': 'The studio\n' });
    repository.commit('Tides', { 'tides.plica': recipe('tides') });
    expect((await changed(repository, ['HEAD~1', 'HEAD'])).changes).toEqual(['tides added']);
    expect((await changed(repository, ['HEAD', 'HEAD~1'])).changes).toEqual(['tides removed']);
    expect(await plicaIn(repository, ['diff', 'HEAD~1', 'HEAD~1'])).toEqual({
      code: 2,
      out: '',
      err: 'plica: HEAD~1: .: there are no recipes (*.plica) in this folder\n',
    });
  });

  test('an envelope under another name, in another file, was renamed', async () => {
    const repository = scratchRepository();
    repository.commit('Ebb', { 'ebb.plica': recipe('ebb') });
    repository.put({ 'ebb.plica': null, 'slim.plica': recipe('slim-ebb') });
    expect((await changed(repository, [])).changes).toEqual(['slim-ebb renamed']);
  });

  test('two places, one of which is not there: that is trouble, not a removal', async () => {
    const repository = studio();
    const missing = await plicaIn(repository, ['diff', 'HEAD:specs/tide.plica', 'specs/tides.plica']);
    expect(missing).toEqual({
      code: 2,
      out: '',
      err: 'plica: HEAD: specs/tide.plica: there is no such file or folder; did you mean `specs/tides.plica`?\n',
    });
  });
});

test('what git ignores, submodules and other repositories inside are not of the work tree', async () => {
  const repository = studio();
  repository.git('checkout', '--', '.');
  const other = scratchRepository();
  other.commit('Theirs', { 'theirs.plica': recipe('theirs') });
  repository.git('submodule', '--quiet', 'add', other.top, 'guest');
  repository.commit('With a guest', { '.gitignore': 'proofs/\nscratch.plica\n' });
  repository.put({
    'proofs/proof.plica': recipe('proof'),
    'specs/scratch.plica': recipe('scratch'),
    'proofs/deep/deeper.plica': BROKEN,
  });
  mkdirSync(join(repository.top, 'lodger'));
  const lodger = repositoryAt(join(repository.top, 'lodger'));
  lodger.git('init', '--quiet');
  lodger.put({ 'lodger.plica': recipe('lodger') });
  expect(await plicaIn(repository, ['diff'])).toEqual({ code: 0, out: 'Nothing changed\n', err: '' });
  expect(await changed(repository, [], 'specs')).toMatchObject({ code: 0, changes: [] });
});

/** What is failed on, and how it ends with a new title, with another blank, and with a new envelope. */
const FAILING: readonly (readonly [list: string, title: number, cut: number, added: number])[] = [
  ['recut', 0, 1, 0],
  ['rescore', 0, 1, 0],
  ['wording', 1, 0, 0],
  ['recut,wording', 1, 1, 0],
  ['added', 0, 0, 1],
  ['removed', 0, 0, 0],
  ['restock,reglue,retrim,none', 0, 0, 0],
  // Spaces after commas are no part of a name.
  ['added, recut, wording', 1, 1, 1],
];

test('--fail-on: only what it lists ends with 1', async () => {
  const repositories = [
    { 'a.plica': recipe('tides', 'title: "High water"') },
    { 'a.plica': recipe('tides', 'seam: 9/16') },
    { 'b.plica': recipe('ebb') },
  ].map((after) => {
    const repository = scratchRepository();
    repository.commit('Before', { 'a.plica': recipe('tides') });
    repository.put(after);
    return repository;
  });
  const codes = async (...options: readonly string[]) =>
    (await Promise.all(repositories.map((each) => plicaIn(each, ['diff', ...options])))).map(
      ({ code }) => code,
    );
  expect(await codes()).toEqual([1, 1, 1]);
  for (const [list, ...expected] of FAILING)
    expect.soft([list, ...(await codes('--fail-on', list))]).toEqual([list, ...expected]);
});

describe('a side that cannot be read', () => {
  test('mistakes of writing are said with their side, what compiled is compared, and the end is 2', async () => {
    const repository = scratchRepository();
    repository.commit('Slip', { 'tides.plica': BROKEN, 'moon.plica': recipe('moon') });
    repository.put({ 'tides.plica': recipe('tides'), 'moon.plica': recipe('moon', 'title: "Moon"') });
    const { code, out, err } = await plicaIn(repository, ['diff', '--fail-on', 'recut']);
    expect(code).toBe(2);
    expect(err).toMatch(/^plica: HEAD: these mistakes keep recipes from being compared\nerror\[syntax\]/);
    expect(err).toContain('tides.plica:3');
    expect(out).toContain('moon: wording');
    expect(out).toContain('tides: cannot be read');
    const back = await plicaIn(repository, ['diff', '.', 'HEAD:']);
    expect(back).toMatchObject({ code: 2 });
    expect(back.out).toContain('tides: cannot be read');
  });

  test('what a file that is used hides is not told as removed, whatever the folders are called', async () => {
    const lets = 'units in\n\nlet hand = 1/4\n';
    const eased = recipe('tides', 'ease: hand').replace('units in\n', 'units in\n\nuse "lets.plica"\n');
    const files = {
      'old/lets.plica': lets,
      'old/tides.plica': eased,
      'new/lets.plica': lets.replace('=', '= ='),
      'new/tides.plica': eased,
    };
    for (const sides of ['old new', 'new old', 'old/tides.plica new/tides.plica']) {
      const { code, out } = await plica(`diff ${sides}`, { files });
      expect(code).toBe(2);
      expect(out).toContain('tides: cannot be read');
    }
  });

  test('a mistake elsewhere does not matter to the envelope that is asked about', async () => {
    const repository = scratchRepository();
    repository.commit('Slip', { 'tides.plica': BROKEN, 'moon.plica': recipe('moon') });
    expect(await plicaIn(repository, ['diff', '--only', 'moon'])).toMatchObject({
      code: 0,
      out: 'Nothing changed\n',
    });
    expect(await plicaIn(repository, ['diff', '--only', 'tides'])).toMatchObject({ code: 2, out: '' });
    // Nothing differs, but what the mistake hides may.
    expect(await plicaIn(repository, ['diff'])).toMatchObject({
      code: 2,
      out: 'Nothing changed in what could be read\n',
    });
    repository.put({ 'tides.plica': recipe('tides') });
    const { code, out } = await plicaIn(repository, ['diff', '--only', 'tides', '--fail-on', 'recut']);
    expect(code).toBe(2);
    expect(out).toContain('tides: cannot be read');
  });

  test('a new file with a mistake is not told as nothing, in a review either', async () => {
    const repository = scratchRepository();
    repository.commit('Moon', { 'moon.plica': recipe('moon') });
    repository.put({ 'tides.plica': BROKEN });
    expect(await plicaIn(repository, ['diff', '--format', 'markdown'])).toMatchObject({
      code: 2,
      out: '**Nothing changed in what could be read.**\n',
    });
  });

  test('a file that is not text on one side ends it; on both, the others are compared', async () => {
    const bytes = Uint8Array.of(0x00, 0xff, 0xfe);
    const repository = scratchRepository();
    repository.commit('Both', { 'tides.plica': recipe('tides'), 'moon.plica': recipe('moon') });
    repository.put({ 'tides.plica': bytes });
    const once = await plicaIn(repository, ['diff']);
    expect(once).toMatchObject({ code: 2, out: '' });
    expect(once.err).toBe('plica: the work tree: tides.plica: line 1 is not UTF-8; save the file as UTF-8\n');
    repository.commit('Bytes');
    repository.put({ 'moon.plica': recipe('moon', 'title: "Moon"') });
    const twice = await plicaIn(repository, ['diff']);
    expect(twice.code).toBe(2);
    expect(twice.out).toContain('moon: wording');
  });

  test('a merge in progress: the conflicts are mistakes in the work tree', async () => {
    const repository = scratchRepository();
    repository.commit('One', { 'tides.plica': recipe('tides', 'seam: 1/2') });
    repository.git('checkout', '--quiet', '-b', 'wide');
    repository.commit('Wide', { 'tides.plica': recipe('tides', 'seam: 3/4') });
    repository.git('checkout', '--quiet', 'main');
    repository.commit('Narrow', { 'tides.plica': recipe('tides', 'seam: 7/16') });
    expect(() => repository.git('merge', 'wide')).toThrow();
    const { code, out, err } = await plicaIn(repository, ['diff']);
    expect(code).toBe(2);
    expect(err).toMatch(/^plica: the work tree: these mistakes keep recipes from being compared\nerror\[/);
    expect(out).toContain('tides: cannot be read');
    expect(await changed(repository, ['main', 'wide'])).toEqual({ code: 1, err: '', changes: ['tides'] });
  });
});

describe('what names nothing', () => {
  /** Operands in the studio's repository, and what is said of them. */
  const NOTHING: readonly (readonly [operands: readonly string[], said: string])[] = [
    [
      ['card'],
      'card: there is no such file or folder here, and as a revision it cannot be read (`card`: there is no such revision); did you mean `cards`?',
    ],
    // As a build has it whose variable is not set.
    [[''], 'OLD is empty; it is to be a path or a revision'],
    [['HEAD', ''], 'NEW is empty; it is to be a path or a revision'],
    [['v1..HEAD'], 'v1..HEAD: two revisions are given apart: `plica diff v1 HEAD`'],
    [
      ['v2', 'HEAD'],
      'v2: there is no such file or folder here, and as a revision it cannot be read (`v2`: there is no such revision)',
    ],
    [
      ['v2:specs'],
      'v2:specs: there is no such file or folder here, and as a revision it cannot be read (`v2`: there is no such revision)',
    ],
    [
      ['--', '--output=stolen'],
      '--output=stolen: there is no such file or folder here, and as a revision it cannot be read (`--output=stolen`: there is no such revision)',
    ],
    [['v1:spec'], 'v1: spec: there is no such file or folder; did you mean `specs`?'],
    [
      ['HEAD^{tree}'],
      'HEAD^{tree}: there is no such file or folder here, and as a revision it cannot be read (`HEAD^{tree}`: it is a tree, no commit)',
    ],
    [
      ['HEAD:../elsewhere'],
      'HEAD:../elsewhere: there is no such file or folder here, and as a revision it cannot be read (../elsewhere: it is not in this repository)',
    ],
    [['..'], '..: it is not in this repository'],
  ];

  test('is said with both readings, and what may have been meant', async () => {
    const repository = studio();
    for (const [operands, said] of NOTHING) {
      const ran = await plicaIn(repository, ['diff', ...operands]);
      expect.soft(ran).toEqual({ code: 2, out: '', err: `plica: ${said}\n` });
    }
    expect(readdirSync(repository.top).toSorted()).toEqual(['.git', 'cards', 'specs']);
  });

  test('outside a repository', async () => {
    const repository = repositoryAt(scratch({ 'tides.plica': recipe('tides') }));
    expect(await plicaIn(repository, ['diff'])).toEqual({
      code: 2,
      out: '',
      err: 'plica: without OLD, what changed since `HEAD` is told, but this folder is in no git repository\n',
    });
    expect(await plicaIn(repository, ['diff', 'tides.plica'])).toEqual({
      code: 2,
      out: '',
      err: 'plica: this folder is in no git repository\n',
    });
  });

  test('in a repository without a commit, and in a bare one', async () => {
    const empty = scratchRepository();
    empty.put({ 'tides.plica': recipe('tides') });
    expect((await plicaIn(empty, ['diff'])).err).toContain('but nothing has been committed here yet');
    const studioTop = studio().top;
    const bare = join(scratch(), 'bare');
    repositoryAt(studioTop).git('clone', '--quiet', '--bare', '.', bare);
    expect(await plicaIn(repositoryAt(bare), ['diff'])).toEqual({
      code: 2,
      out: '',
      err: 'plica: a bare repository has no work tree; say two revisions to compare\n',
    });
    // git keeps a file `HEAD` in that folder: the revision is meant.
    for (const newer of ['main', 'HEAD'])
      expect(await changed(repositoryAt(bare), ['v1', newer])).toEqual({
        code: 1,
        err: '',
        changes: ['tides'],
      });
  });
});

test('what is a path and a revision is the path; a colon makes it the revision', async () => {
  const repository = studio();
  repository.git('branch', 'cards', 'v1');
  const path = await changed(repository, ['cards']);
  expect(path).toEqual({
    code: 1,
    err: 'plica: `cards` is read as a path, though it is a revision too (that is `cards:`)\n',
    changes: ['moon'],
  });
  expect(await changed(repository, ['./cards'])).toEqual({ ...path, err: '' });
  expect(await changed(repository, ['cards:'])).toEqual({ code: 1, err: '', changes: ['moon', 'tides'] });
});

test('a revision alone beside a path is all of it, which is said', async () => {
  const repository = studio();
  const said = 'plica: `v1` stands for all its recipes; `v1:PATH` is one file or folder in it\n';
  expect(await changed(repository, ['v1', 'cards'])).toEqual({
    code: 1,
    err: said,
    changes: ['moon', 'tides removed'],
  });
  expect(await changed(repository, ['specs', 'v1'])).toMatchObject({
    err: said,
    changes: ['moon added', 'tides'],
  });
  expect(await changed(repository, ['v1', '.'])).toEqual({ code: 1, err: '', changes: ['moon', 'tides'] });
});

describe('hostile names of files', () => {
  const NAMES = [
    'with space.plica',
    '"quoted".plica',
    'new\nline.plica',
    '-dash.plica',
    '--',
    'HEAD:x.plica',
    '*.plica',
    'naïve.plica',
  ];

  test('all of them at once, and each by itself', async () => {
    const repository = scratchRepository();
    const name = (index: number): string => `card-${index}`;
    const files = (title: string) =>
      Object.fromEntries(
        NAMES.map((path, index) => [
          path === '--' ? '--/dash.plica' : path,
          recipe(name(index), `title: "${title}"`),
        ]),
      );
    repository.commit('Hostile', files('Old'));
    repository.put(files('New'));
    const all = { code: 1, err: '', changes: NAMES.map((_, index) => name(index)) };
    expect(await changed(repository, [])).toEqual(all);
    for (const [index, path] of NAMES.entries()) {
      const one = { ...all, changes: [name(index)] };
      expect(await changed(repository, ['--', path])).toEqual(one);
      expect(await changed(repository, ['--', `HEAD:${path}`])).toEqual(one);
    }
    const { out } = await plicaIn(repository, ['diff']);
    expect(out).toContain('new line.plica:3');
  });
});

test('only one envelope, by its newer name or its older one', async () => {
  const repository = scratchRepository();
  repository.commit('Three', {
    'a.plica': recipe('ebb') + envelope('flood') + envelope('moon', 'seam: 3/4'),
  });
  repository.put({
    'a.plica':
      recipe('ebb', 'title: "Ebb"') + envelope('flood', 'title: "Flood"') + envelope('new-moon', 'seam: 3/4'),
  });
  expect((await changed(repository, ['--only', 'ebb'])).changes).toEqual(['ebb']);
  expect((await changed(repository, ['--only', 'moon'])).changes).toEqual(['new-moon renamed']);
  expect((await changed(repository, ['--only', 'new-moon'])).changes).toEqual(['new-moon renamed']);
  expect(await plicaIn(repository, ['diff', '--only', 'flod'])).toEqual({
    code: 2,
    out: '',
    err: 'plica: no envelope `flod` could be read on either side; did you mean `flood`?\n',
  });
});

describe('formats', () => {
  test('JSON is as its schema says, whatever changed', async () => {
    const repository = studio();
    repository.put({ 'new.plica': recipe('flood'), 'specs/tides.plica': BROKEN });
    for (const operands of [[], ['v1', 'HEAD'], ['HEAD', 'HEAD']]) {
      const { out } = await plicaIn(repository, ['diff', '--format', 'json', ...operands]);
      const ajv = new Ajv({ allErrors: true, allowUnionTypes: true });
      ajv.validate(schema, JSON.parse(out));
      expect(ajv.errors).toBeNull();
    }
  });

  test('Markdown, and a page with a picture of what is cut anew', async () => {
    const markdown = await plicaIn(studio(), ['diff', 'v1', '--format', 'markdown']);
    expect(markdown.out).toMatch(/^#+ /m);
    expect(markdown.out).toContain('tides');
    const { out } = await plicaIn(studio(), ['diff', 'v1', '--format', 'html']);
    expect(out).toMatch(/^<!doctype html>/);
    expect(out.match(/<img /g)).toHaveLength(1);
  });

  test('colour where it is wanted', async () => {
    const { out } = await plicaIn(studio(), ['diff', 'v1', '--color', 'always']);
    expect(out).toContain('\u001b[33mrecut');
    const { out: plain } = await plicaIn(studio(), ['diff', 'v1']);
    expect(plain).not.toContain('\u001b');
    expect(stripVTControlCharacters(out)).toBe(plain);
  });
});

describe('--svg', () => {
  test('replaces a file whole, with its permissions, and leaves nothing beside it', async () => {
    const repository = studio();
    const place = join(repository.top, 'out/change.svg');
    repository.put({ 'out/change.svg': 'old' });
    chmodSync(place, 0o640);
    const before = statSync(place).ino;
    const { code, err } = await plicaIn(repository, ['diff', 'v1', '--svg', 'out/change.svg']);
    expect({ code, err }).toEqual({ code: 1, err: 'wrote out/change.svg\n' });
    expect(readSvg(readFileSync(place, 'utf8')).words('title')).toBe('tides: before and after');
    expect(statSync(place).mode & 0o777).toBe(0o640);
    expect(statSync(place).ino).not.toBe(before);
    expect(readdirSync(join(repository.top, 'out'))).toEqual(['change.svg']);
  });

  test('one picture beside the other where several are cut anew', async () => {
    const repository = scratchRepository();
    repository.commit('Two', { 'a.plica': recipe('ebb') + envelope('flood') });
    repository.put({ 'a.plica': recipe('ebb', 'seam: 3/4') + envelope('flood') });
    const width = async (): Promise<number> => {
      await plicaIn(repository, ['diff', '--svg', 'change.svg']);
      const { root } = readSvg(readFileSync(join(repository.top, 'change.svg'), 'utf8'));
      return Number.parseFloat(root.getAttribute('width') ?? '');
    };
    const one = await width();
    repository.put({ 'a.plica': recipe('ebb', 'seam: 3/4') + envelope('flood', 'seam: 3/4') });
    expect(await width()).toBeGreaterThan(1.8 * one);
  });

  test('where nothing is cut or scored otherwise, a file is left alone', async () => {
    const repository = studio();
    repository.put({ 'change.svg': 'mine' });
    expect(await plicaIn(repository, ['diff', '--svg', 'change.svg'])).toMatchObject({
      code: 1,
      err: 'nothing is cut or scored otherwise; change.svg is not written\n',
    });
    expect(readFileSync(join(repository.top, 'change.svg'), 'utf8')).toBe('mine');
  });

  test('a recipe is no place for it, nor a folder', async () => {
    const repository = studio();
    expect(await plicaIn(repository, ['diff', 'v1', '--svg', 'cards/moon.plica'])).toEqual({
      code: 2,
      out: '',
      err: 'plica: `--svg cards/moon.plica` is to be a drawing; its name ends in `.svg`\n',
    });
    mkdirSync(join(repository.top, 'a.svg'));
    const { code, err } = await plicaIn(repository, ['diff', 'v1', '--svg', 'a.svg']);
    expect(code).toBe(2);
    expect(err).toBe('plica: a.svg cannot be written: something that is no file is in its place\n');
  });
});

test('the work tree, the index and what git says of them stay as they are', async () => {
  const repository = studio();
  writeFileSync(join(repository.top, 'untracked.plica'), recipe('untracked'));
  const state = () =>
    readdirSync(repository.top, { recursive: true, encoding: 'utf8' }).map((path) => [
      path,
      lstatSync(join(repository.top, path)).mtimeMs,
    ]);
  const before = state();
  for (const operands of [[], ['v1'], ['v1', 'HEAD'], ['v1:specs'], ['cards'], ['nowhere']])
    await plicaIn(repository, ['diff', ...operands]);
  expect(state()).toEqual(before);
});
