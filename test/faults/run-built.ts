import { spawn, spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect } from 'vitest';
import type { Ran } from '../support/program.js';

/** The program as it is shipped. */
export const PROGRAM = resolve('dist/plica.cjs');

/** Without colour, and with a fixed day, so that the same recipe gives the same bytes. */
export const ENV: NodeJS.ProcessEnv = {
  ...process.env,
  NO_COLOR: '1',
  SOURCE_DATE_EPOCH: '1700000000',
  NODE: process.execPath,
  PROGRAM,
};

/** What hangs is ended after so many ms, and then has no exit code. */
const PATIENCE = 40_000;
const OPTIONS = { encoding: 'utf8', env: ENV, timeout: PATIENCE, maxBuffer: 2 ** 28 } as const;

/** Runs the built program as a process of its own. */
export function plica(folder: string, ...args: readonly string[]): Ran {
  const ran = spawnSync(process.execPath, [PROGRAM, ...args], { ...OPTIONS, cwd: folder });
  return { code: ran.status, out: ran.stdout, err: ran.stderr };
}

/** Runs a script of bash, in which `plica` is the built program; shells of other kinds within it must name it by `$NODE` and `$PROGRAM`. */
export function shell(folder: string, script: string): Ran {
  const ran = spawnSync('bash', ['-c', `plica() { "$NODE" "$PROGRAM" "$@"; }; export -f plica\n${script}`], {
    ...OPTIONS,
    cwd: folder,
  });
  return { code: ran.status, out: ran.stdout, err: ran.stderr };
}

/** Starts the built program and waits for its end, while the test goes on. */
export const running = (folder: string, ...args: readonly string[]): Promise<Ran> =>
  new Promise((done) => {
    const child = spawn(process.execPath, [PROGRAM, ...args], { cwd: folder, env: ENV, timeout: PATIENCE });
    const said = { out: '', err: '' };
    child.stdout.setEncoding('utf8').on('data', (text: string) => (said.out += text));
    child.stderr.setEncoding('utf8').on('data', (text: string) => (said.err += text));
    child.on('close', (code) => done({ code, ...said }));
  });

/** The files right in a folder, by name, each byte a character. */
export const filesIn = (folder: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    readdirSync(folder, { withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map(({ name }) => [name, readFileSync(join(folder, name), 'latin1')]),
  );

/** Demands that whatever was said is said in sentences: no stack, no code of the system’s, no plea to report a bug. */
export function expectPlainWords({ out, err }: Ran): void {
  expect(out + err).not.toMatch(/^ {4}at |node:internal|Error:|EPIPE|something went wrong/m);
}
