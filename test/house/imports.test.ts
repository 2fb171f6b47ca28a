import { expect, test } from 'vitest';
import { allowed, type Import, importsOf, programFiles, roomOf } from './rooms.js';

const imports = programFiles().flatMap(importsOf);
const rooms = allowed();

const said = ({ file, line, text }: Import): string => `${file}:${line}: ${text.trim()}`;

/** Where each package may be imported, and nowhere else. */
const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  '@tarikjabiri/dxf': ['src/emit'],
  chevrotain: ['grammar'],
  'clipper2-ts': ['src/plane'],
  pdfkit: ['src/emit'],
  'railroad-diagrams': ['grammar'],
  sarif: ['src/diagnostics'],
  chokidar: ['src/host'],
  chalk: ['src/cli'],
  'cli-progress': ['src/cli'],
  'node:buffer': ['src/host'],
  'node:child_process': ['src/host'],
  'node:crypto': ['src/host', 'src/cli', 'src/emit'],
  'node:fs': ['src/host'],
  'node:module': ['src/host'],
  'node:os': ['src/host'],
  'node:path': ['src/host', 'src/cli'],
  'node:util': ['src/cli'],
  'node:worker_threads': ['src/host'],
};

/** What stands in `src` itself: the pipeline, the list of problems, and the library's door. */
const ENTRANCES: Readonly<Record<string, readonly string[]>> = {
  'src/compile.ts': [
    'src/diagnostics',
    'src/recipe',
    'src/folding',
    'src/rules',
    'src/plan',
    'src/fit',
    'src/text',
  ],
  'src/problems.ts': ['src/diagnostics', 'src/syntax', 'src/recipe', 'src/rules', 'src/plan', 'src/diff'],
  'src/index.ts': [...rooms.keys(), 'src/compile.ts'].filter(
    (room) => !['src/cli', 'src/host'].includes(room),
  ),
};

test('the table of rooms is there, and has every room', () => {
  const found = new Set(programFiles().map(roomOf));
  expect([...rooms.keys(), ...Object.keys(ENTRANCES)].sort()).toEqual([...found].sort());
});

test('rooms import only the rooms that the table in DEVELOPERS.md allows', () => {
  const strangers = imports.filter(({ file, from }) => {
    const [here, there] = [roomOf(file), roomOf(from.replace(/\.js$/, '.ts'))];
    if (!/^(src|grammar)\//.test(from) || here === there) return false;
    const may = ENTRANCES[here] ?? rooms.get(here) ?? [];
    return (
      !may.includes(there) && !(here === 'src/cli' && ['src/compile.ts', 'src/problems.ts'].includes(there))
    );
  });
  expect(strangers.map(said)).toEqual([]);
});

/** The package, where a file of it is named. */
const packageOf = (from: string): string => /^(?:@[^/]+\/)?[^/]+/.exec(from)?.[0] ?? from;

test('packages are imported only where they belong', () => {
  const strangers = imports.filter(({ file, from }) => {
    if (/^(src|grammar)\//.test(from) || from === 'package.json') return false;
    return !(PACKAGES[packageOf(from)] ?? []).includes(roomOf(file));
  });
  expect(strangers.map(said)).toEqual([]);
});

test('files are imported, not folders: an index is a door or an ordered list', () => {
  const doors = imports.map(({ from }) => from).filter((from) => from.endsWith('/index.js'));
  expect([...new Set(doors)].sort()).toEqual([
    'src/cli/commands/index.js',
    'src/emit/catalogue/index.js',
    'src/emit/index.js',
    'src/rules/index.js',
  ]);
});
