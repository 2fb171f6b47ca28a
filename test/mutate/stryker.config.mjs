// Mutation tests of one room: see "Mutation testing" in DEVELOPERS.md.
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const room = process.env.ROOM ?? 'measure';
const kept = join(tmpdir(), 'plica-mutants');

// oxlint-disable-next-line import/no-default-export -- the tool reads its settings from one
export default {
  mutate: [`src/${room}/**/*.ts`],
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'test/mutate/vitest.config.ts', related: false },
  coverageAnalysis: 'perTest',
  // A mutant that acts while its file is loaded has to be met by every test of the room.
  ignoreStatic: true,
  // The tool would rewrite the settings that it finds there by a compiler that version 7 no longer has.
  tsconfigFile: 'none.json',
  concurrency: 2,
  timeoutMS: 5_000,
  thresholds: { high: 95, low: 85, break: 85 },
  reporters: ['clear-text', 'html', 'json', 'progress-append-only'],
  clearTextReporter: { allowColor: false, reportTests: false, reportMutants: false },
  htmlReporter: { fileName: join(kept, `${room}.html`) },
  jsonReporter: { fileName: join(kept, `${room}.json`) },
  tempDirName: join(kept, 'work'),
  ignorePatterns: ['dist', 'out', 'coverage'],
};
