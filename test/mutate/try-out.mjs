// Runs a room's tests on its mutants and watches them: a mutant on which nothing has come back for long has run out of time.
import { spawn } from 'node:child_process';
import { appendFileSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** ms between two looks, and how many looks without news are borne (time in which the machine lets nothing run is none). */
const LOOK = 500;
const PATIENCE = 60;

/** What became of each mutant: `loads`, `reaches`, `notices` and `late`, each a set of mutants. */
export async function tryOut(room, folder) {
  const journal = join(folder, 'journal.txt');
  writeFileSync(journal, '');
  let known = -1;
  while (!(await ranThrough(room, folder, journal))) {
    const { kind, what } = entries(journal).at(-1) ?? {};
    if (kind === 'tries') appendFileSync(journal, `late ${what}\n`);
    const settled = entries(journal).filter(({ kind }) => SETTLES.has(kind)).length;
    if (settled === known) throw new Error(`the tests of ${room} do not run: ${kind} ${what}`);
    known = settled;
  }
  const all = entries(journal);
  const those = (wanted) => new Set(all.filter(({ kind }) => kind === wanted).map(({ what }) => what));
  return { loads: those('loads'), reaches: those('reaches'), notices: those('notices'), late: those('late') };
}

/** What brings a run further, so that the next one begins elsewhere. */
const SETTLES = new Set(['notices', 'late', 'through']);

const entries = (journal) =>
  readFileSync(journal, 'utf8')
    .split('\n')
    .slice(0, -1)
    .map((line) => ({ kind: line.slice(0, line.indexOf(' ')), what: line.slice(line.indexOf(' ') + 1) }));

/** Whether all tests met all their mutants; where they were stopped, or stopped themselves, they go on from there the next time. */
function ranThrough(room, folder, journal) {
  const args = ['run', '--config', 'test/mutate/vitest.config.ts', '--reporter', 'dot'];
  const env = { ...process.env, ROOM: room, MUTANTS: folder, CI: '1', NODE_NO_WARNINGS: '1' };
  const tests = spawn(process.execPath, ['node_modules/vitest/vitest.mjs', ...args], {
    stdio: ['ignore', 'ignore', 'inherit'],
    env,
  });
  let size = -1;
  let looks = 0;
  const watch = setInterval(() => {
    const now = statSync(journal).size;
    looks = now === size ? looks + 1 : 0;
    size = now;
    if (looks > PATIENCE) tests.kill('SIGKILL');
  }, LOOK);
  return new Promise((resolve) => {
    tests.on('exit', (code) => {
      clearInterval(watch);
      resolve(code === 0);
    });
  });
}
