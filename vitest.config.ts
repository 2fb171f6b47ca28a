import { defineConfig } from 'vitest/config';

// No test is a race: laws are tried on thousands of recipes, and a busy machine may take its time over them.
// The runner would leave a core of two to itself.
// oxlint-disable-next-line import/no-default-export -- vitest reads its settings from one
export default defineConfig({ test: { testTimeout: 60_000, hookTimeout: 60_000, maxWorkers: '100%' } });
