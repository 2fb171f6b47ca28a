// A thousand recipes in a hundred files, one of them changed: what it costs to tell, beside compiling both states once.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { median, table } from './measure.mjs';
import { recipes } from './texts.mjs';

const RUNS = 7;
const FILES = 100;
const RECIPES = 10;

export async function differences() {
  const top = mkdtempSync(join(tmpdir(), 'plica-bench-'));
  const run = runner(top);
  project(top);
  const works = [
    ['check, both states one after the other', () => run(0, 'check', 'old').then(() => run(0, 'check', 'new'))],
    ['diff of two folders', () => run(1, 'diff', 'old', 'new')],
    ['diff of HEAD and the work tree, with git', () => run(1, 'diff', 'new')],
  ];
  const figures = works.map(() => []);
  for (let round = -1; round < RUNS; round++) {
    for (const [index, [, work]] of works.entries()) {
      const start = process.hrtime.bigint();
      await work();
      if (round >= 0) figures[index].push(Number(process.hrtime.bigint() - start) / 1e6);
    }
  }
  rmSync(top, { recursive: true });
  const both = median(figures[0]);
  table(
    [`${FILES * RECIPES} recipes, one changed, median of ${RUNS}`, 'ms', 'times both'],
    works.map(([name], index) => {
      const ms = median(figures[index]);
      return [name, ms.toFixed(0), (ms / both).toFixed(2)];
    }),
  );
}

/** `old`, and `new` with another seam in one recipe; what is committed of `new` is as `old`. */
function project(top) {
  const git = (...args) => execFileSync('git', args, { cwd: top, stdio: 'ignore' });
  for (let file = 0; file < FILES; file++) {
    const text = recipes(RECIPES).replaceAll('tide-card', `card-${file}`).replaceAll('house', `house-${file}`);
    mkdirSync(join(top, 'old'), { recursive: true });
    writeFileSync(join(top, 'old', `cards-${file}.plica`), text);
  }
  cpSync(join(top, 'old'), join(top, 'new'), { recursive: true });
  git('init', '--quiet');
  git('add', '--all');
  git('-c', 'user.name=Bench', '-c', 'user.email=bench@example.org', 'commit', '--quiet', '-m', 'Old');
  const changed = join(top, 'new', 'cards-50.plica');
  writeFileSync(changed, readFileSync(changed, 'utf8').replace('  title:', '  seam: 9/16\n  title:'));
}

/** Runs the built program in this process, without a word. */
function runner(cwd) {
  const program = createRequire(import.meta.url)('../../dist/plica.cjs').program();
  const silent = { write: () => {}, isRead: () => true, isTerminal: () => false, columns: () => null };
  const host = { ...program.nodeHost(cwd), out: silent, err: silent };
  return async (expected, ...args) => {
    const code = await program.run(args, host);
    if (code !== expected) throw new Error(`${args.join(' ')} ended with ${code}`);
  };
}
