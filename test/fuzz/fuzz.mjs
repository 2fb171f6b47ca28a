// Fuzzes texts and what is made of them: `npm run fuzz -- --help`. The engine is asked what runs before anything does.
import { readFileSync, rmSync } from 'node:fs';
import { Session } from 'node:inspector';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const place = resolve(`node_modules/.plica-fuzz-${process.pid}.mjs`);
await build({
  entryPoints: ['test/fuzz/fuzz.ts'],
  outfile: place,
  bundle: true,
  packages: 'external',
  platform: 'node',
  format: 'esm',
  target: 'node20',
  logLevel: 'warning',
});
const bundle = readFileSync(place, 'utf8');

const session = new Session();
session.connect();
session.post('Profiler.enable');
session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: true });
const url = pathToFileURL(place).href;

/** What ran of the bundle since the last time; the session lies in this thread, so it answers at once. */
function take() {
  let functions = [];
  session.post('Profiler.takePreciseCoverage', (error, { result } = { result: [] }) => {
    if (error) throw error;
    functions = result.find((script) => script.url === url)?.functions ?? [];
  });
  return functions;
}

const { fuzz } = await import(url);
rmSync(place);
process.exitCode = await fuzz(process.argv.slice(2), bundle, take);
