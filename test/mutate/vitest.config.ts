// The tests that a room's mutants are put to: those that hold the room, in one process, and quick.
import { readFileSync } from 'node:fs';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Tests by the room that they hold; those stand first that fail soonest where something is wrong. */
const TESTS: Readonly<Record<string, readonly string[]>> = {
  measure: ['measure/*'],
  plane: ['plane/*'],
  folding: ['folding/*', 'properties/{folding,liner}-laws', 'accepted/*'],
  rules: ['rules/*', 'accepted/*', 'rules/mend'],
  diff: ['diff/*'],
};

const room = process.env['ROOM'] ?? '';
const tests = TESTS[room] ?? Object.values(TESTS).flat();
const beginnings = tests.map((path) => `/test/${path.replace(/[*{].*$/, '')}`);

/** A file that is named once more further on stands there. */
const rank = ({ moduleId }: TestSpecification): number =>
  beginnings.findLastIndex((beginning) => moduleId.includes(beginning));

/** In the order of the table; the runner asks for a class. */
class AsListed extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return files.toSorted((one, other) => rank(one) - rank(other));
  }
}

/** The room's files with its mutants in them, by path; read when the first is asked for. */
type Texts = Readonly<Record<string, string>>;
let texts: Texts | null = null;
const read = (): Texts => JSON.parse(readFileSync(`${process.env['MUTANTS']}/files.json`, 'utf8')) as Texts;

/** By room, functions that none of its mutants can reach, and that take long: each by its file and name. */
const BEFORE: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  rules: { '/src/folding/fold.ts': 'fold', '/src/folding/measure.ts': 'measure' },
  diff: { '/src/compile.ts': 'compile' },
};

/** A file whose function keeps what it came to. */
function keeping(text: string, path: string): string | null {
  const [, name] = Object.entries(BEFORE[room] ?? {}).find(([file]) => path.endsWith(file)) ?? [];
  if (name === undefined) return null;
  return `${text.replace(`export function ${name}(`, `function ${name}Anew(`)}
import { kept } from '${import.meta.dirname}/kept.ts';
export const ${name} = kept(${name}Anew);\n`;
}

// oxlint-disable-next-line import/no-default-export -- vitest reads its settings from one
export default defineConfig({
  plugins: [
    { name: 'mutants', enforce: 'pre', load: (path: string) => (texts ??= read())[path], transform: keeping },
  ],
  test: {
    runner: `${import.meta.dirname}/on-mutants.ts`,
    pool: 'threads',
    maxWorkers: 1,
    include: tests.map((path) => `test/${path}.test.ts`),
    alias: { 'fast-check': `${import.meta.dirname}/few-runs.ts` },
    isolate: false,
    testTimeout: 60_000,
    onConsoleLog: () => false,
    sequence: { sequencer: AsListed },
  },
});
