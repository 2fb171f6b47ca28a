/* The package as npm makes it: installed into an empty project and for the whole machine, and run where there is no network. */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';

const RECIPE = 'units in\n\nenvelope tide-card {\n  card: 5 x 7\n}\n';
const PATIENCE = 120_000;
const top = mkdtempSync(join(tmpdir(), 'plica-package-'));
const project = join(top, 'studio');
const prefix = join(top, 'machine');
const npm = (cwd: string, ...args: string[]) =>
  execFileSync('npm', [...args, '--no-audit', '--no-fund', '--loglevel', 'error'], { cwd, encoding: 'utf8' });

/** Without any network where the system can take it away, and with nothing of this shell’s but the path. */
const cutOff = spawnSync('unshare', ['-rn', 'true']).status === 0 ? ['unshare', '-rn'] : [];
function offline(...command: readonly string[]) {
  const [program = '', ...args] = [...cutOff, ...command];
  const { status, stdout, stderr } = spawnSync(program, args, {
    cwd: project,
    env: { HOME: top, PATH: process.env['PATH'] },
    encoding: 'utf8',
  });
  return { code: status, out: stdout, err: stderr };
}

beforeAll(() => {
  const [{ filename = '' } = {}] = JSON.parse(
    npm('.', 'pack', '--json', '--ignore-scripts', '--pack-destination', top),
  ) as { filename?: string }[];
  const tarball = join(top, filename);
  execFileSync('mkdir', [project]);
  writeFileSync(join(project, 'package.json'), '{ "name": "studio", "private": true, "type": "module" }\n');
  writeFileSync(join(project, 'a.plica'), RECIPE);
  npm(project, 'install', '--prefer-offline', tarball);
  npm(project, 'install', '--prefer-offline', '--global', '--prefix', prefix, tarball);
}, PATIENCE);

afterAll(() => rmSync(top, { recursive: true, force: true }));

test.each([
  ['in a project', join(project, 'node_modules/.bin/plica')],
  ['for the whole machine', join(prefix, 'bin/plica')],
])('installed %s it checks, formats, and builds PDFs without a network', (_, program) => {
  const out = join(top, 'out');
  expect(offline(program, 'check', 'a.plica')).toMatchObject({ code: 0, err: '' });
  expect(offline(program, 'format', '--check', 'a.plica')).toMatchObject({ code: 0, out: '' });
  expect(offline(program, 'build', 'a.plica', '--out', out).code).toBe(0);
  expect(readFileSync(join(out, 'tide-card.cut-sheet.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
  expect(offline(program, 'catalogue', '.', '--out', join(out, 'tides.pdf')).code).toBe(0);
});

test('what the README says of the library runs, and its types are complete', () => {
  const example = /## As a library\n\n```ts\n(.*?)```/s.exec(readFileSync('README.md', 'utf8'))?.[1] ?? '';
  const said = [.../\/\/ (.*)$/gm[Symbol.matchAll](example)].map(([, line]) => line).join('\n');
  writeFileSync(join(project, 'example.js'), example);
  expect(offline(process.execPath, 'example.js')).toEqual({ code: 0, out: `${said}\n`, err: '' });
  writeFileSync(join(project, 'example.ts'), example);
  const types = ['--types', 'node', '--typeRoots', resolve('node_modules/@types')];
  const options = ['--ignoreConfig', '--noEmit', '--strict', '--module', 'nodenext', '--target', 'es2023'];
  expect(offline(resolve('node_modules/.bin/tsc'), ...options, ...types, 'example.ts')).toEqual({
    code: 0,
    out: '',
    err: '',
  });
});

/** Licences that let anyone use, change and pass on, and ask for a notice at most. */
const PERMISSIVE = [
  '0BSD',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BSL-1.0',
  'ISC',
  'MIT',
  '(MIT AND Zlib)',
];

interface Component {
  readonly name: string;
  readonly licenses?: readonly { license: { id?: string } }[];
}

/** One package names its licence in a file only. */
const licenceOf = ({ name, licenses: [one] = [] }: Component): string | undefined =>
  one?.license.id ??
  /^MIT License$/m.exec(readFileSync(`node_modules/${name}/LICENSE`, 'utf8'))?.[0].slice(0, 3);

test('npm’s bill of materials names every package that comes along, each with a permissive licence', () => {
  const bill = JSON.parse(execFileSync('npm', ['run', '--silent', 'materials'], { encoding: 'utf8' })) as {
    readonly components: readonly Component[];
  };
  expect(bill.components.map(({ name }) => name)).toEqual(expect.arrayContaining(['pdfkit', 'tinypool']));
  expect(bill.components.filter((component) => !PERMISSIVE.includes(licenceOf(component) ?? ''))).toEqual([]);
});

test('no package in the lock file is deprecated', () => {
  const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8')) as {
    packages: Readonly<Record<string, { readonly deprecated?: string }>>;
  };
  expect(Object.entries(packages).filter(([, { deprecated }]) => deprecated !== undefined)).toEqual([]);
});
