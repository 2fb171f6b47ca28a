import { defineConfig } from 'vitest/config';

// No test is a race: laws are tried on thousands of recipes, and a busy machine may take its time over them.
export default defineConfig({ test: { testTimeout: 60_000 } });
