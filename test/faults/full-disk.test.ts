/* A disk with no room left, and a system that lets no file grow past a size: said in a sentence, and what was there stays. */
import { mkdirSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Ran } from '../support/program.js';
import { scratch } from '../support/scratch.js';
import { SOUND } from './recipes.js';
import { expectPlainWords, filesIn, plica, shell } from './run-built.js';

/** What `format` lays out anew. */
const LOOSE = SOUND.replace('half-letter', 'half-letter ');

/** What `--fix` mends. */
const CURLY = 'units in\n\nenvelope half-letter {\n  title: “Tides”\n  card: 8 1/2 x 5 1/2\n}\n';

/** Whether a process can be given a disk of its own, which is gone with it. */
const hasSmallDisks =
  shell(tmpdir(), 'unshare --map-root-user --mount mount -t tmpfs -o size=64k none /mnt').code === 0;

/** A folder with recipes, and in `before` what lies on the disk before. */
const desk = (before: Readonly<Record<string, string>>): string =>
  scratch({
    'specs/tides.plica': SOUND,
    'new/tides.plica': SOUND.replace('5 1/2', '5'),
    'before/notes.txt': 'mine',
    ...Object.fromEntries(Object.entries(before).map(([name, text]) => [`before/${name}`, text])),
  });

/** Runs a script with the folder `disk` on a disk of 64 KiB; what lies there at last is copied to `after`. */
function onSmallDisk(folder: string, script: string): Ran {
  for (const name of ['disk', 'after']) mkdirSync(join(folder, name));
  return shell(
    folder,
    `unshare --map-root-user --mount bash -c '
      mount -t tmpfs -o size=64k none disk && cp before/* disk || exit 99
      ${script}
      code=$?; cp -a disk/. after; exit $code'`,
  );
}

/** Leaves no room at all. */
const FILL = 'head -c 1M /dev/zero > disk/fill 2> /dev/null';

const NO_ROOM = /^plica: .*\S cannot be written: no space is left on the disk\n$/;

describe.skipIf(!hasSmallDisks)('a full disk (asks for `unshare` and `mount`)', () => {
  test.each([
    ['build', 'plica build specs --emit svg --out disk'],
    ['build into a folder that is not there yet', 'plica build specs --emit svg --out disk/deep/out'],
    ['build with facts', 'plica build specs --emit facts --out disk'],
    ['a catalogue', 'plica catalogue specs --out disk/tides.csv'],
    ['a catalogue that keeps nothing', 'plica catalogue specs --no-cache --out disk/tides.pdf'],
    ['format', 'plica format disk/loose.plica'],
    ['check --fix', 'plica check --fix disk/curly.plica > /dev/null'],
    ['new', 'cd disk; plica new seaside; code=$?; cd ..; (exit $code)'],
    ['a drawing of a difference', 'plica diff specs new --svg disk/change.svg > /dev/null'],
    ['a dependency file', 'plica build specs --emit svg --out out --depfile disk/tides.d 2> >(tail -1 >&2)'],
  ])('%s: 2, the reason, and every file as it was', (_, script) => {
    const before = {
      'half-letter.svg': 'the old one',
      'tides.csv': 'the old one',
      'tides.pdf': 'the old one',
    };
    const folder = desk({ ...before, 'loose.plica': LOOSE, 'curly.plica': CURLY });
    const { code, err } = onSmallDisk(folder, `${FILL}; ${script}`);
    expect(err).toMatch(NO_ROOM);
    expect(code).toBe(2);
    const { fill, ...found } = filesIn(join(folder, 'after'));
    expect(fill?.length).toBeGreaterThan(0);
    expect(found).toEqual(filesIn(join(folder, 'before')));
  });

  test('room for one file but not for all of an envelope’s: none of them is replaced', () => {
    const folder = desk({ 'half-letter.svg': 'the old one', 'half-letter.dxf': 'the old one' });
    const { code, err } = onSmallDisk(folder, 'plica build specs --emit svg,dxf,print --out disk');
    expect({ code, err }).toEqual({ code: 2, err: expect.stringMatching(NO_ROOM) });
    expect(filesIn(join(folder, 'after'))).toEqual(filesIn(join(folder, 'before')));
  });

  test('once there is room again, the same command goes through', () => {
    const folder = desk({});
    const build = 'plica build specs --emit svg --out disk';
    const { code } = onSmallDisk(folder, `${FILL}; ${build} 2> /dev/null; rm disk/fill; ${build}`);
    expect(code).toBe(0);
    expect(readdirSync(join(folder, 'after')).sort()).toEqual(['half-letter.svg', 'notes.txt']);
  });
});

test.skipIf(process.platform === 'win32').each([
  ['build', 'plica build specs --out out'],
  ['catalogue', 'plica catalogue specs --out out/tides.pdf'],
  ['catalogue, from what was kept', 'plica catalogue specs --out out/tides.pdf'],
])('a limit on the size of files (`ulimit -f`): %s says so, 2, and old files stay', (name, script) => {
  const folder = scratch({ 'specs/tides.plica': SOUND, 'out/tides.pdf': 'the old one' });
  mkdirSync(join(folder, 'kept'));
  if (name.includes('kept')) plica(folder, 'catalogue', 'specs', '--out', 'out/other.pdf');
  const before = filesIn(join(folder, 'out'));
  const ran = shell(folder, `ulimit -f 8; ${script}`); // in units of 1024 bytes, which no PDF of ours keeps within
  expect(ran).toMatchObject({ code: 2, out: '' });
  expect(ran.err).toMatch(/^plica: .*\S cannot be written: the system allows no file of that size\n$/);
  expectPlainWords(ran);
  expect(filesIn(join(folder, 'out'))).toEqual(before);
});

test.skipIf(process.platform !== 'linux').each(['check a.plica', 'show a.plica', 'diff a.plica b.plica'])(
  '`%s`, sent to a file on a full disk (`/dev/full`), ends with 2 and no stack',
  (args) => {
    const folder = scratch({ 'a.plica': SOUND, 'b.plica': SOUND.replace('5 1/2', '5') });
    const { code, err } = shell(folder, `plica ${args} > /dev/full`);
    expect(code).toBe(2);
    expect(err).toBe('plica: what was to be printed cannot be written: no space is left on the disk\n');
  },
);
