import { spawnSync } from 'node:child_process';
import { copyFileSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { delimiter, join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { scratch } from '../support/scratch.js';

const PAPERS = 'units in\n\npaper kraft {\n  sheet: 12 x 12\n  weight: 118 gsm\n}\n';
const recipe = (name: string, card: string) =>
  `units in\n\nuse "../papers.plica"\n\nenvelope ${name} {\n  card: ${card}\n  paper: kraft\n}\n`;

/** A studio's folder with what the engine reads, and the built program on the path. */
function studio(engineFile: string) {
  const folder = scratch({
    'catalogue.plica': 'units in\n\ncatalogue {\n  title: "Tides"\n}\n',
    'papers.plica': PAPERS,
    'recipes/harbour.plica': recipe('harbour', '7 x 5'),
    'recipes/strand.plica': recipe('strand', '5 1/2 x 4 1/4'),
  });
  copyFileSync(`test/tools/build-engines/${engineFile}`, join(folder, engineFile));
  const programs = scratch();
  symlinkSync(resolve('dist/plica.cjs'), join(programs, 'plica'));
  const env = { ...process.env, PATH: `${programs}${delimiter}${process.env['PATH']}` };
  return {
    at: (path: string) => join(folder, path),
    /** A file's new text, with a time that no engine takes for the old one. */
    write: (path: string, text: string) => {
      const later = Date.now() + 10;
      while (Date.now() < later);
      writeFileSync(join(folder, path), text);
    },
    run: (program: string, ...args: string[]) => {
      const { status, stdout, stderr } = spawnSync(program, args, { cwd: folder, env, encoding: 'utf8' });
      return { status, said: stdout + stderr };
    },
    whenMade: (path: string) => statSync(join(folder, path)).mtimeMs,
  };
}

const ENGINES = [
  { engine: 'make', file: 'Makefile', args: ['-j2'], nothing: /up to date/ },
  { engine: 'ninja', file: 'build.ninja', args: ['-j2'], nothing: /no work to do/ },
];

describe.each(ENGINES)('$engine makes a catalogue of facts', ({ engine, file, args, nothing }) => {
  test('what has changed, and no more, is made again', () => {
    const { at, write, run, whenMade } = studio(file);
    const harbour = 'facts/recipes/harbour.facts.json';
    const strand = 'facts/recipes/strand.facts.json';
    const made = () => [harbour, strand, 'tides.pdf'].map(whenMade);

    expect(run(engine, ...args)).toMatchObject({ status: 0 });
    const first = made();
    expect(run(engine, ...args).said).toMatch(nothing);
    expect(made()).toEqual(first);

    write('recipes/strand.plica', recipe('strand', '6 x 4'));
    expect(run(engine, ...args)).toMatchObject({ status: 0 });
    const second = made();
    expect(second.map((when, index) => when > (first[index] ?? 0))).toEqual([false, true, true]);

    write('papers.plica', PAPERS.replace('118', '120'));
    expect(run(engine, ...args)).toMatchObject({ status: 0 });
    expect(made().map((when, index) => when > (second[index] ?? 0))).toEqual([true, true, true]);

    const book = readFileSync(at('tides.pdf'));
    expect(run('plica', 'catalogue', '.', '--out', 'at-once.pdf')).toMatchObject({ status: 0 });
    expect(readFileSync(at('at-once.pdf')).equals(book)).toBe(true);
  });

  test('an error fails its target and leaves the book; mended, it goes on', () => {
    const { at, write, run } = studio(file);
    expect(run(engine, ...args)).toMatchObject({ status: 0 });
    const before = readFileSync(at('tides.pdf'));
    write('recipes/strand.plica', recipe('strand', 'half'));
    const failed = run(engine, ...args);
    expect(failed.status).not.toBe(0);
    expect(failed.said).toContain('recipes/strand.plica:6');
    expect(readFileSync(at('tides.pdf')).equals(before)).toBe(true);
    write('recipes/strand.plica', recipe('strand', '6 x 4'));
    expect(run(engine, ...args)).toMatchObject({ status: 0 });
    expect(readFileSync(at('tides.pdf')).equals(before)).toBe(false);
  });

  test('a used file that is gone is told by plica, not by the engine', () => {
    const { at, run } = studio(file);
    expect(run(engine, ...args)).toMatchObject({ status: 0 });
    rmSync(at('papers.plica'));
    const { status, said } = run(engine, ...args);
    expect(status).not.toBe(0);
    expect(said).toContain('papers.plica');
    expect(said).toContain('cannot be read');
  });
});
