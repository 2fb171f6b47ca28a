// Times work and prints medians as tables, which are kept for the README.
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

export const median = (figures) => [...figures].sort((a, b) => a - b)[figures.length >> 1];

/** How long some work takes, in ms. */
export function timed(work) {
  const start = process.hrtime.bigint();
  work();
  return Number(process.hrtime.bigint() - start) / 1e6;
}

/** The median of some runs, in ms, after one that does not count. */
export const medianOf = (runs, work) => median(Array.from({ length: runs + 1 }, () => timed(work)).slice(1));

/** A run of the built program, in s and MB. */
export function wholeProcess(cwd, ...args) {
  const command = ['time', '-f', '%e %M', process.execPath, resolve('dist/plica.cjs'), ...args];
  const { stderr } = spawnSync('/usr/bin/env', command, { cwd, encoding: 'utf8' });
  const [, seconds, kilobytes] = /([\d.]+) (\d+)\n$/.exec(stderr) ?? [];
  if (seconds === undefined) throw new Error(stderr);
  return { seconds: Number(seconds), megabytes: Number(kilobytes) / 1000 };
}

/** The tables printed so far. */
export const printed = [];

/** A table: words to the left, figures to the right. */
export function table(headings, rows) {
  const cells = [headings, ...rows].map((row) => row.map(String));
  const widths = headings.map((_, column) => Math.max(3, ...cells.map((row) => row[column].length)));
  const line = (row) =>
    `| ${row.map((cell, column) => (column === 0 ? cell.padEnd(widths[0]) : cell.padStart(widths[column]))).join(' | ')} |`;
  const rule = `|${widths.map((width, column) => `${'-'.repeat(width + 1)}${column === 0 ? '-' : ':'}`).join('|')}|`;
  const lines = [line(cells[0]), rule, ...cells.slice(1).map(line)].join('\n');
  printed.push(lines);
  console.log(`${lines}\n`);
}
