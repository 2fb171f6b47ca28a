import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { GAPING, SOUND } from '../support/command-line.js';
import { scratch } from '../support/scratch.js';

/** A real process that watches a real folder. Nothing here waits for a time: only for what is said. */
const PATIENCE = 60_000;

interface Watching {
  /** Waits until this has been said, after what was waited for before. */
  readonly said: (text: string) => Promise<void>;
  readonly end: (signal: NodeJS.Signals) => Promise<number | null>;
  /** Reads no more; its exit code, whenever it ends. */
  readonly leave: () => Promise<number | null>;
}

async function watching(folder: string, args: readonly string[] = []): Promise<Watching> {
  const child: ChildProcess = spawn(process.execPath, [resolve('dist/plica.cjs'), 'watch', ...args], {
    cwd: folder,
    env: { ...process.env, NO_COLOR: '1' },
  });
  onTestFinished(() => void child.kill('SIGKILL'));
  const ended = new Promise<number | null>((done) => child.once('exit', done));
  let heard = '';
  let wake = (): void => {};
  child.stdout?.on('data', (bytes) => {
    heard += String(bytes);
    wake();
  });
  const said = async (text: string): Promise<void> => {
    while (!heard.includes(text)) await new Promise<void>((more) => (wake = more));
    heard = heard.slice(heard.indexOf(text) + text.length);
  };
  await said('nothing wrong in 1 envelope of 1 file\n');
  return {
    said,
    end: (signal) => {
      child.kill(signal);
      return ended;
    },
    leave: () => {
      child.stdout?.destroy();
      return ended;
    },
  };
}

const WELL = 'nothing wrong in 1 envelope of 1 file\n';

test('a save, a save by renaming, a mistake and its mending; Ctrl-C ends it with 0', {
  timeout: PATIENCE,
}, async () => {
  const folder = scratch({ 'a.plica': SOUND });
  const file = join(folder, 'a.plica');
  const { said, end } = await watching(folder);
  writeFileSync(file, `${SOUND}# later\n`);
  await said(`a.plica changed\n${WELL}`);
  for (const text of [`${SOUND}# renamed\n`, `${SOUND}# renamed again\n`]) {
    writeFileSync(join(folder, 'a.plica~'), text);
    renameSync(join(folder, 'a.plica~'), file);
    await said(`a.plica changed\n${WELL}`);
  }
  writeFileSync(file, 'units in\nenvelope {');
  await said('a.plica changed\nerror[syntax]');
  writeFileSync(file, SOUND);
  await said(`a.plica changed\n${WELL}`);
  expect(await end('SIGINT')).toBe(0);
  expect(readdirSync(folder)).toEqual(['a.plica']);
});

test('files and folders that come and go, and a folder that goes altogether', {
  timeout: PATIENCE,
}, async () => {
  const folder = scratch({ 'specs/a.plica': SOUND });
  const specs = join(folder, 'specs');
  const { said, end } = await watching(folder, ['specs']);
  writeFileSync(join(specs, 'b.plica'), GAPING);
  await said('specs/b.plica is new\nerror[creases-cross]');
  rmSync(join(specs, 'b.plica'));
  await said('specs/b.plica is gone\n');
  mkdirSync(join(specs, 'deep/deeper'), { recursive: true });
  writeFileSync(join(specs, 'deep/deeper/c.plica'), GAPING);
  await said('specs/deep/deeper/c.plica is new\nerror[creases-cross]');
  rmSync(specs, { recursive: true });
  await said('specs/a.plica is gone\n');
  mkdirSync(specs);
  writeFileSync(join(specs, 'a.plica'), SOUND);
  await said(`specs/a.plica is new\n${WELL}`);
  expect(await end('SIGTERM')).toBe(0);
});

test('one file alone, with one that it uses elsewhere; what is built starts no new look', {
  timeout: PATIENCE,
}, async () => {
  const folder = scratch({
    '.git/HEAD': '',
    'papers/house.plica': 'units in\nstyle house { seam: 1/2 }\n',
    'specs/a.plica':
      'units in\nuse "../papers/house.plica"\nenvelope ebb like house { card: 8 1/2 x 5 1/2 }\n',
  });
  const { said, end } = await watching(folder, ['specs/a.plica', '--out', 'out']);
  writeFileSync(join(folder, 'papers/house.plica'), 'units in\nstyle house { seam: 3/4 }\n');
  await said(`papers/house.plica changed\n${WELL}`);
  rmSync(join(folder, 'papers/house.plica'));
  await said('papers/house.plica is gone\nerror[unknown-name]');
  expect(await end('SIGINT')).toBe(0);
  expect(readdirSync(join(folder, 'out'))).toEqual(['ebb.cut-sheet.pdf', 'ebb.svg', 'ebb.template.pdf']);
});

test('when nobody reads it any more, the next save ends it', { timeout: PATIENCE }, async () => {
  const folder = scratch({ 'a.plica': SOUND });
  const { leave } = await watching(folder);
  const ended = leave();
  writeFileSync(join(folder, 'a.plica'), `${SOUND}# later\n`);
  expect(await ended).toBe(0);
});
