/* A build can end at any moment: the power fails, the machine runs out of memory. No half a file may be left in a whole one's place. */
import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, rmSync, watch, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { scratch } from '../support/scratch.js';
import { ENV, filesIn, plica, PROGRAM } from './run-built.js';

/** Two envelopes, of which everything that is written differs from year to year. */
const recipes = (year: number): string =>
  `units in\n${['ebb', 'flood']
    .map(
      (name, index) =>
        `\nenvelope ${name} {\n  title: "Tides of ${year}"\n  card: ${3 + index} x ${4 + index}\n}\n`,
    )
    .join('')}`;

/** Has a process killed when it is the moment; what comes back calls that off. */
type Moment = (child: ChildProcess, out: string) => () => void;

const afterTime =
  (ms: number): Moment =>
  (child) => {
    const timer = setTimeout(() => child.kill('SIGKILL'), ms);
    return () => clearTimeout(timer);
  };

/** When something in the folder of outputs has changed so often: a file is begun, written, moved. */
const atChange =
  (count: number): Moment =>
  (child, out) => {
    let seen = 0;
    const eye = watch(out, () => ++seen === count && child.kill('SIGKILL'));
    return () => eye.close();
  };

/** Runs a command until it is killed, or ends before; the signal that ended it. */
function killedAt(
  moment: Moment,
  folder: string,
  command: readonly string[],
): Promise<NodeJS.Signals | null> {
  const child = spawn(process.execPath, [PROGRAM, ...command], { cwd: folder, env: ENV, stdio: 'ignore' });
  const callOff = moment(child, join(folder, 'out'));
  return new Promise((done) =>
    child.on('exit', (_, signal) => {
      callOff();
      done(signal);
    }),
  );
}

/** What an output is called until it is whole: `.NAME.PID.part`. */
const PART = /^\.(.+)\.\d+(?:-\d+)?\.part$/;

test.each([
  { name: 'build', command: ['build', 'specs', '--out', 'out'], changes: [1, 4, 10, 13] },
  { name: 'catalogue', command: ['catalogue', 'specs', '--out', 'out/tides.pdf'], changes: [1, 2, 4, 6] },
])(
  '`$name` killed at any moment leaves each file as it was or as it will be',
  async ({ command, changes }) => {
    const folder = scratch({ 'specs/tides.plica': recipes(2024) });
    const [out, kept] = [join(folder, 'out'), join(folder, 'kept')];
    const run = (): void => expect(plica(folder, ...command)).toMatchObject({ code: 0 });
    run();
    const before = filesIn(out);
    cpSync(out, kept, { recursive: true });

    writeFileSync(join(folder, 'specs/tides.plica'), recipes(2025));
    const start = performance.now();
    run();
    const whole = performance.now() - start;
    const after = filesIn(out);
    const names = Object.keys(after);
    expect(Object.keys(before)).toEqual(names);
    for (const name of names) expect(before[name] === after[name]).toBe(false);

    /** The old outputs again, beside whatever the killed left behind. */
    const putBack = (): void => {
      for (const name of readdirSync(out)) if (!PART.test(name)) rmSync(join(out, name), { recursive: true });
      cpSync(kept, out, { recursive: true });
    };
    const moments = [
      ...Array.from({ length: 12 }, (_, index) => afterTime((whole * (index + 0.5)) / 12)),
      ...changes.map(atChange),
    ];
    const ends: (NodeJS.Signals | null)[] = [];
    for (const moment of moments) {
      putBack();
      ends.push(await killedAt(moment, folder, command));
      const found = filesIn(out);
      for (const name of names) expect([before[name], after[name]]).toContain(found[name]);
      const strangers = Object.keys(found).filter((name) => !names.includes(name));
      for (const stranger of strangers) expect(names).toContain(PART.exec(stranger)?.[1]);
    }
    expect(ends).toContain('SIGKILL');

    putBack();
    run();
    const last = filesIn(out);
    expect(Object.keys(last)).toEqual(names);
    for (const name of names) expect(last[name] === after[name]).toBe(true);
  },
);

test('a first build that is killed leaves whole files, or none', async () => {
  const folder = scratch({ 'specs/tides.plica': recipes(2024) });
  const command = ['build', 'specs', '--emit', 'svg,dxf,fold,card', '--out', 'out'];
  expect(plica(folder, ...command)).toMatchObject({ code: 0 });
  const whole = filesIn(join(folder, 'out'));
  for (const count of [1, 2, 5, 8, 11, 14]) {
    rmSync(join(folder, 'out'), { recursive: true });
    mkdirSync(join(folder, 'out'));
    await killedAt(atChange(count), folder, command);
    for (const [name, content] of Object.entries(filesIn(join(folder, 'out'))))
      if (!PART.test(name)) expect(whole[name] === content).toBe(true);
  }
});
