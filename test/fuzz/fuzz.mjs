// Fuzzes texts and what is made of them: `npm run fuzz -- --help`.
import { rmSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { COUNTS, instrument } from './instrument.mjs';

const { outputFiles } = await build({
  entryPoints: ['test/fuzz/fuzz.ts'],
  write: false,
  bundle: true,
  packages: 'external',
  platform: 'node',
  format: 'esm',
  target: 'node20',
  logLevel: 'warning',
});
const { text, rooms } = instrument(outputFiles[0].text);

// Within the project, so that packages are found.
const place = resolve(`node_modules/.plica-fuzz-${process.pid}.mjs`);
writeFileSync(place, text);
const { fuzz } = await import(pathToFileURL(place).href);
rmSync(place);
process.exitCode = await fuzz(process.argv.slice(2), { rooms, counts: globalThis[COUNTS] });
