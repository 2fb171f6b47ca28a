// Runs a room's tests on its mutants and watches them: a mutant on which nothing has come back for long has run out of time.
import { spawn } from 'node:child_process';
import { appendFileSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** ms between two looks, and how many looks without news are borne (time in which the machine lets nothing run is none). */
const LOOK = 500;
const PATIENCE = 40;

/** What became of each mutant: `loads`, `reaches`, `notices` and `late`, each a set of mutants. */
export async function tryOut(room, folder) {
  const journal = join(folder, 'journal.txt');
  writeFileSync(journal, '');
  while (!(await ranThrough(room, folder, journal))) {
    const { kind, what } = entries(journal).at(-1) ?? {};
    if (kind !== 'tries') throw new Error(`the tests of ${room} do not run: ${kind} ${what}`);
    appendFileSync(journal, `late ${what}\n`);
  }
  const all = entries(journal);
  const those = (wanted) => new Set(all.filter(({ kind }) => kind === wanted).map(({ what }) => what));
  return { loads: those('loads'), reaches: those('reaches'), notices: those('notices'), late: those('late') };
}

const entries = (journal) =>
  readFileSync(journal, 'utf8')
    .split('\n')
    .slice(0, -1)
    .map((line) => ({ kind: line.slice(0, line.indexOf(' ')), what: line.slice(line.indexOf(' ') + 1) }));

/** Whether the tests came to their end; they are stopped where they do not get on, and go on from there the next time. */
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
  return new Promise((resolve, reject) => {
    tests.on('exit', (code, signal) => {
      clearInterval(watch);
      if (signal !== null) resolve(false);
      else if (code === 0) resolve(true);
      else reject(new Error(`the tests of ${room} fail without any mutant, or after one`));
    });
  });
}
