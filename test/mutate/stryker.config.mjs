// Mutation tests of the rooms that compute: see "Mutation testing" in DEVELOPERS.md.
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const kept = join(tmpdir(), 'plica-mutants');

// oxlint-disable-next-line import/no-default-export -- the tool reads its settings from one
export default {
  mutate: ['measure', 'plane', 'folding', 'rules', 'diff'].map((room) => `src/${room}/**/*.ts`),
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'test/mutate/vitest.config.ts', related: false },
  coverageAnalysis: 'perTest',
  // The tool rewrites what it finds there by a compiler that version 7 no longer has.
  tsconfigFile: 'none.json',
  concurrency: 2,
  timeoutMS: 5_000,
  ignoreStatic: true,
  thresholds: { high: 95, low: 85, break: 85 },
  reporters: ['clear-text', 'json', 'html', 'progress-append-only'],
  clearTextReporter: { allowColor: false, reportTests: false, reportMutants: false },
  jsonReporter: { fileName: join(kept, 'mutants.json') },
  htmlReporter: { fileName: join(kept, 'mutants.html') },
  tempDirName: join(kept, 'work'),
  ignorePatterns: ['dist', 'out', 'coverage'],
};
