// Times the built program side by side with the bare runtime, and the library over growing input. Prints medians and
// ratios; asserts nothing. `npm run bench` builds first.
import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { compile, parse, source } from '../../dist/index.js';

const RUNS = 15;
const PROGRAM = 'dist/plica.cjs';
const RECIPE = 'test/bench/half-letter.plica';

const median = (figures) => [...figures].sort((a, b) => a - b)[figures.length >> 1];
const row = (...cells) => console.log(cells.map((cell, index) => String(cell)[index === 0 ? 'padEnd' : 'padStart'](index === 0 ? 34 : 12)).join(''));

function timed(work) {
  const start = process.hrtime.bigint();
  work();
  return Number(process.hrtime.bigint() - start) / 1e6;
}

/** Whole processes in turn, so that the machine's drift falls on all alike. */
function processes() {
  const out = mkdtempSync(join(tmpdir(), 'plica-bench-'));
  const commands = [
    { name: 'node -e 0', args: ['-e', '0'] },
    { name: 'plica check', args: [PROGRAM, 'check', RECIPE] },
    { name: 'plica check, compiled anew', args: [compiledAnew(out), 'check', RECIPE] },
    { name: 'plica show', args: [PROGRAM, 'show', RECIPE] },
    { name: 'plica build (two PDFs)', args: [PROGRAM, 'build', RECIPE, '--out', out] },
  ];
  const figures = commands.map(() => []);
  for (let run = -1; run < RUNS; run++) {
    commands.forEach(({ name, args }, index) => {
      const ms = timed(() => {
        const { status } = spawnSync(process.execPath, args, { stdio: 'ignore' });
        if (status !== 0) throw new Error(`${name} ended with ${status}`);
      });
      if (run >= 0) figures[index].push(ms);
    });
  }
  rmSync(out, { recursive: true });
  row(`whole process, median of ${RUNS}`, 'ms', 'times bare');
  const bare = median(figures[0]);
  commands.forEach(({ name }, index) => {
    const ms = median(figures[index]);
    row(name, ms.toFixed(1), (ms / bare).toFixed(2));
  });
}

/** The program without the compiled form that the build keeps: as it starts on any other Node. */
function compiledAnew(folder) {
  for (const file of ['plica.cjs', 'program.cjs']) copyFileSync(`dist/${file}`, join(folder, file));
  return join(folder, 'plica.cjs');
}

const HEADER = 'units in\nstyle house {\n  ease: 1/4\n  seam: 1/2\n  step: 1/16\n}\n';
const recipe = (index) =>
  `envelope tide-card-${index} like house {\n  title: "Tide card ${index}"\n  card: ${4 + (index % 5)} 1/2 x ${3 + (index % 3)} 1/4\n}\n`;
const noReader = () => ({ kind: 'unreadable', reason: 'nothing is used' });

/** The library over one text of many recipes: parsing alone, and all the way to the findings. */
function library() {
  console.log();
  row('in process, median of 5', 'ms', 'recipes/s', 'MB/s', 'growth');
  for (const { name, work } of [
    { name: 'parse', work: (text) => parse(source('bench.plica', text)) },
    {
      name: 'compile',
      work: (text) => compile([{ id: 'bench', source: source('bench.plica', text) }], noReader),
    },
  ]) {
    let before = null;
    for (const count of [1, 1000, 10000]) {
      const text = HEADER + Array.from({ length: count }, (_, index) => recipe(index)).join('');
      const runs = count === 1 ? 200 : 5;
      const ms = median(Array.from({ length: runs + 1 }, () => timed(() => work(text))).slice(1));
      const growth = before && count > 1000 ? `${(ms / before).toFixed(1)} x` : '';
      row(`${name}, ${count} recipes`, ms.toFixed(2), Math.round((count / ms) * 1000), (text.length / 1000 / ms).toFixed(2), growth);
      before = ms;
    }
  }
}

console.log(`Node ${process.version}, ${process.platform} ${process.arch}\n`);
processes();
library();
