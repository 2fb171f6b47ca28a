// Whole processes, cold: each command beside the bare runtime.
import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { median, table, timed } from './measure.mjs';

const RUNS = 15;
const PROGRAM = 'dist/plica.cjs';
const RECIPE = 'test/bench/half-letter.plica';

/** Runs each in turn, so that the machine's drift falls on all alike. */
export function coldStart() {
  const folder = mkdtempSync(join(tmpdir(), 'plica-bench-'));
  const commands = [
    ['node -e 0', '-e', '0'],
    ['node with an empty module', emptyModule(folder)],
    ['plica check', PROGRAM, 'check', RECIPE],
    ['plica check, compiled anew', compiledAnew(folder), 'check', RECIPE],
    ['plica show', PROGRAM, 'show', RECIPE],
    ['plica format --check', PROGRAM, 'format', '--check', RECIPE],
    ['plica explain', PROGRAM, 'explain', 'creases-cross'],
    ['plica build (two PDFs, one SVG)', PROGRAM, 'build', RECIPE, '--out', folder],
  ];
  const figures = commands.map(() => []);
  for (let run = -1; run < RUNS; run++) {
    commands.forEach(([name, ...args], index) => {
      const ms = timed(() => {
        const { status } = spawnSync(process.execPath, args, { stdio: 'ignore' });
        if (status !== 0) throw new Error(`${name} ended with ${status}`);
      });
      if (run >= 0) figures[index].push(ms);
    });
  }
  rmSync(folder, { recursive: true });
  const bare = median(figures[0]);
  table(
    [`whole process, median of ${RUNS}`, 'ms', 'times bare'],
    commands.map(([name], index) => {
      const ms = median(figures[index]);
      return [name, ms.toFixed(1), (ms / bare).toFixed(2)];
    }),
  );
}

function emptyModule(folder) {
  const path = join(folder, 'empty.cjs');
  writeFileSync(path, '');
  return path;
}

/** The program without the compiled form that the build keeps: as it starts on any other Node. */
function compiledAnew(folder) {
  for (const file of ['plica.cjs', 'program.cjs', 'further.cjs']) copyFileSync(`dist/${file}`, join(folder, file));
  return join(folder, 'plica.cjs');
}
