import { existsSync, lstatSync, mkdirSync, readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withLine, withoutLine } from '../../src/cli/git/attributes-line.js';
import { plica, SOUND } from '../support/command-line.js';
import { gitWithPlica, plicaIn } from '../support/program.js';
import { repositoryAt, type ScratchRepository, scratchRepository } from '../support/repository.js';
import { scratch } from '../support/scratch.js';

const LINE = '*.plica diff=plica';

const setup = (repository: ScratchRepository, ...options: readonly string[]) =>
  plicaIn(repository, ['git-setup', ...options]);

/** The attributes as bytes, a character each; null: there are none. */
function attributes({ top }: ScratchRepository): string | null {
  const path = join(top, '.gitattributes');
  return existsSync(path) ? readFileSync(path, 'latin1') : null;
}

/** What a repository has set about recipes. */
function settings({ git }: ScratchRepository): string {
  try {
    return git('config', '--local', '--get-regexp', '^diff\\.plica\\.');
  } catch {
    return '';
  }
}

test('the line is written, and the settings are only printed', async () => {
  const repository = scratchRepository();
  const { code, out, err } = await setup(repository);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toBe(`added \`${LINE}\` to .gitattributes
these settings are left to you, or to \`plica git-setup --apply\`:
  git config diff.plica.textconv 'plica git-text --'
  git config diff.plica.xfuncname '^[[:blank:]]*((envelope|style|paper)[[:blank:]].*|# on paper)$'
`);
  expect(attributes(repository)).toBe(`${LINE}\n`);
  expect(settings(repository)).toBe('');
  expect(repository.git('check-attr', 'diff', 'cards/tides.plica')).toBe('cards/tides.plica: diff: plica');
});

test('what is printed, typed into a shell, sets what --apply sets', async () => {
  const [typed, applied] = [scratchRepository(), scratchRepository()];
  const options = ['--external', '--program', `node '/opt/tools of ours/plica.cjs'`];
  const { out } = await setup(typed, ...options);
  const lines = out.split('\n').filter((line) => line.startsWith('  git config '));
  expect(lines).toHaveLength(3);
  typed.git('-c', `alias.typed=!${lines.map((line) => line.trim()).join(' && ')}`, 'typed');
  expect(await setup(applied, ...options, '--apply')).toMatchObject({ code: 0 });
  expect(settings(typed)).toContain(`diff.plica.command node '/opt/tools of ours/plica.cjs' git-diff --`);
  expect(settings(typed).split('\n').sort()).toEqual(settings(applied).split('\n').sort());
});

test('set up twice, nothing more is written than by once', async () => {
  const repository = scratchRepository();
  await setup(repository, '--apply', '--external');
  const once = { attributes: attributes(repository), settings: settings(repository) };
  const { code, out } = await setup(repository, '--apply', '--external');
  expect({ code, out }).toEqual({
    code: 0,
    out: `.gitattributes has \`${LINE}\` already
diff.plica.textconv is set already
diff.plica.command is set already
diff.plica.xfuncname is set already
`,
  });
  expect({ attributes: attributes(repository), settings: settings(repository) }).toEqual(once);
});

test('another program takes the place of the one before', async () => {
  const repository = scratchRepository();
  await setup(repository, '--apply');
  await setup(repository, '--apply', '--program', 'npx plica');
  expect(settings(repository)).toContain('diff.plica.textconv npx plica git-text --');
  expect(await setup(repository, '--remove')).toMatchObject({ code: 0 });
  expect(settings(repository)).toBe('');
});

/** Attributes that somebody else wrote; null: there are none. */
const THEIRS: readonly (readonly [what: string, text: string | null])[] = [
  ['none', null],
  ['an empty file', ''],
  ['a line', '*.png binary\n'],
  ['a line without an end', '*.png binary'],
  ['lines of another system', '*.png binary\r\n*.txt text\r\n'],
  ['the same, the last without an end', '*.png binary\r\n*.txt text'],
  ['empty lines at the end', '*.png binary\n\n\n'],
  ['bytes that are no UTF-8', '# \xe9t\xe9\n"\xe9.png" binary'],
  ['a carriage return at the end', '# odd\r'],
];

test.each(THEIRS)('to set up and to remove leaves no trace: %s', async (_, text) => {
  const repository = scratchRepository();
  if (text !== null) repository.put({ '.gitattributes': Buffer.from(text, 'latin1') });
  const config = readFileSync(join(repository.top, '.git/config'), 'utf8');
  expect(await setup(repository, '--apply', '--external')).toMatchObject({ code: 0, err: '' });
  expect(attributes(repository)).toMatch(/(^|\n)\*\.plica diff=plica\r?\n?$/);
  expect(attributes(repository)?.startsWith(text ?? '')).toBe(true);
  expect(repository.git('check-attr', 'diff', 'a.plica')).toBe('a.plica: diff: plica');
  expect(await setup(repository, '--remove')).toMatchObject({ code: 0, err: '' });
  expect(attributes(repository)).toBe(text);
  expect(readFileSync(join(repository.top, '.git/config'), 'utf8')).toBe(config);
});

test('any attributes come back byte for byte', () => {
  const pieces = ['a b', '*.png binary', '\n', '\r\n', '\r', ' ', '#', 'diff=plica', '*.plica'];
  const text = fc.array(fc.constantFrom(...pieces), { maxLength: 12 }).map((parts) => parts.join(''));
  fc.assert(
    fc.property(fc.option(text), (before) => {
      const after = withLine(before);
      fc.pre(after !== before);
      expect(withoutLine(after)).toBe(before);
      expect(withLine(after)).toBe(after);
    }),
    { numRuns: 2000 },
  );
});

test('a line that says as much, and more, is somebody’s own: it is enough, and stays', async () => {
  const repository = scratchRepository();
  const text = `*.plica text eol=lf diff=plica\n`;
  repository.put({ '.gitattributes': text });
  expect((await setup(repository)).out).toContain('.gitattributes has');
  expect((await setup(repository, '--remove')).out).toContain(`.gitattributes has no line \`${LINE}\``);
  expect(attributes(repository)).toBe(text);
});

test('what was added since is kept, wherever our line stands', async () => {
  const repository = scratchRepository();
  await setup(repository);
  repository.put({ '.gitattributes': `*.txt text\n${LINE}\n*.png binary\n` });
  expect((await setup(repository, '--remove')).out).toContain(`took \`${LINE}\` out of .gitattributes\n`);
  expect(attributes(repository)).toBe('*.txt text\n*.png binary\n');
});

test('to remove where nothing is set up does nothing, and says so', async () => {
  const repository = scratchRepository();
  expect(await setup(repository, '--remove')).toEqual({
    code: 0,
    err: '',
    out: `.gitattributes has no line \`${LINE}\`
diff.plica.textconv is not set
diff.plica.command is not set
diff.plica.xfuncname is not set
`,
  });
  expect(attributes(repository)).toBe(null);
});

test('what somebody else has set is left', async () => {
  const repository = scratchRepository();
  repository.git('config', 'diff.plica.textconv', 'cat');
  repository.git('config', '--add', 'diff.plica.xfuncname', '^one$');
  repository.git('config', '--add', 'diff.plica.xfuncname', '^two$');
  const before = settings(repository);
  const { code, err } = await setup(repository, '--apply');
  expect(code).toBe(2);
  expect(err).toContain('plica: left diff.plica.textconv as it is: somebody set it to `cat`\n');
  expect(err).toContain('plica: left diff.plica.xfuncname as it is');
  expect(await setup(repository, '--remove')).toMatchObject({ code: 0 });
  expect(settings(repository)).toBe(before);
});

test('from a folder below, and from a work tree beside, it is the top that counts', async () => {
  const repository = scratchRepository();
  repository.commit('A recipe', { 'cards/tides.plica': SOUND });
  const { out } = await plicaIn(repository, ['git-setup'], 'cards');
  expect(out).toContain('to ../.gitattributes\n');
  expect(attributes(repository)).toBe(`${LINE}\n`);
  const beside = join(repository.top, 'beside it');
  repository.git('worktree', 'add', '--quiet', '-b', 'beside', beside);
  expect(await setup(repositoryAt(beside), '--apply')).toMatchObject({ code: 0 });
  expect(attributes(repositoryAt(beside))).toBe(`${LINE}\n`);
  expect(settings(repository)).toContain('git-text');
});

/** Where there is nothing to set up, and what is said. */
const REFUSED: readonly (readonly [options: string, said: string])[] = [
  ['--apply --remove', '`--remove` takes away all that was set up; leave its other options out'],
  ['--remove --external', '`--remove` takes away all that was set up; leave its other options out'],
  ['specs', '`git-setup` does not know what to do with `specs`'],
];

test.each(REFUSED)('git-setup %s', async (options, said) => {
  const repository = scratchRepository();
  const { code, out, err } = await setup(repository, ...options.split(' '));
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toContain(`plica: ${said}\n`);
  expect(attributes(repository)).toBe(null);
});

test('outside a work tree it is said, and nothing is written', async () => {
  expect(await setup(scratchRepository('--bare'))).toMatchObject({
    code: 2,
    out: '',
    err: 'plica: a bare repository has no files for git to know recipes by\n',
  });
  expect(await setup(repositoryAt(scratch()))).toMatchObject({
    code: 2,
    out: '',
    err: 'plica: this folder is in no git repository\n',
  });
  expect(await plica('git-setup')).toMatchObject({ code: 2, out: '', err: 'plica: git is not installed\n' });
});

test('a program that git would not find is not set, since every diff would fail', async () => {
  const files = { '/tools/node_modules/.bin/plica': '' };
  const apply = (env: Readonly<Record<string, string>>, ...more: readonly string[]) =>
    plica(`git-setup --apply ${more.join(' ')}`, { files, env });
  const said =
    "plica: git would not find `plica` on the PATH; say how to call it, as in `--program 'npx plica'`\n";
  expect(await apply({})).toMatchObject({ code: 2, out: '', err: said });
  expect(await apply({ PATH: '/bin:/tools/node_modules/.bin' })).toMatchObject({
    code: 2,
    out: '',
    err: said,
  });
  expect(await apply({}, '--program=other')).toMatchObject({ err: 'plica: git is not installed\n' });
  const found = await plica('git-setup --apply', { files: { '/bin/plica': '' }, env: { PATH: '/bin' } });
  expect(found).toMatchObject({ err: 'plica: git is not installed\n' });
});

test('attributes that are a link or a folder are left alone', async () => {
  const linked = scratchRepository();
  linked.put({ 'theirs.txt': '*.png binary\n' });
  symlinkSync('theirs.txt', join(linked.top, '.gitattributes'));
  const { code, err } = await setup(linked);
  expect({ code, err }).toEqual({
    code: 2,
    err: 'plica: .gitattributes: it is a link, which git does not follow here\n',
  });
  expect(lstatSync(join(linked.top, '.gitattributes')).isSymbolicLink()).toBe(true);
  expect(readFileSync(join(linked.top, 'theirs.txt'), 'utf8')).toBe('*.png binary\n');
  const shut = scratchRepository();
  mkdirSync(join(shut.top, '.gitattributes'));
  expect(await setup(shut)).toMatchObject({ code: 2, err: 'plica: .gitattributes: it is a folder\n' });
});

test('settings that cannot be written: what git says of it', async () => {
  const repository = scratchRepository();
  repository.put({ '.git/config.lock': '' });
  const { code, err } = await setup(repository, '--apply');
  expect(code).toBe(2);
  expect(err).toMatch(/^plica: git: could not lock config file/);
});

test('the built program sets up, and takes away', () => {
  const repository = scratchRepository();
  const run = (options: string) =>
    gitWithPlica(repository, ['-c', `alias.run=!plica git-setup ${options}`, 'run']);
  expect(run('--apply')).toMatchObject({ code: 0, err: '' });
  expect(settings(repository)).toContain('plica git-text --');
  expect(run('--remove')).toMatchObject({ code: 0, err: '' });
  expect(attributes(repository)).toBe(null);
});
