// Bundles plica into dist/, and lays beside it what it needs: fonts, schemas, the notices of what is bundled.
import { chmodSync, copyFileSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename } from 'node:path';
import { build } from 'esbuild';

const FONTS = 'node_modules/@expo-google-fonts/source-sans-3';

rmSync('dist', { recursive: true, force: true });
const bundled = [await bundle('src/cli/main.ts', 'program.cjs'), await bundle('src/index.ts', 'index.js')].flat();
escapeBeyondAscii('dist/program.cjs');
copyFileSync('src/host/start.cjs', 'dist/plica.cjs');
chmodSync('dist/plica.cjs', 0o755);
for (const file of ['pool.cjs', 'leaf-thread.cjs']) copyFileSync(`src/host/${file}`, `dist/${file}`);
for (const schema of ['src/emit/json/facts', 'src/diff/difference', 'src/cli/log'])
  copyFileSync(`${schema}.schema.json`, `dist/${basename(schema)}.schema.json`);
mkdirSync('dist/fonts');
copyFileSync(`${FONTS}/400Regular/SourceSans3_400Regular.ttf`, 'dist/fonts/regular.ttf');
copyFileSync(`${FONTS}/600SemiBold/SourceSans3_600SemiBold.ttf`, 'dist/fonts/bold.ttf');
copyFileSync(`${FONTS}/LICENSE_FONT`, 'dist/fonts/LICENSE_FONT');
writeFileSync('dist/THIRD-PARTY-NOTICES.txt', notices(bundled));
await keepCompiledForm();

/** Bundles an entry; returns the folders of the packages that went into it. */
async function bundle(entry, output) {
  const { metafile } = await build({
    entryPoints: [entry],
    outfile: `dist/${output}`,
    bundle: true,
    platform: 'node',
    format: output.endsWith('.cjs') ? 'cjs' : 'esm',
    target: 'node20',
    minify: true,
    sourcemap: 'external',
    external: ['pdfkit'],
    ...(output.endsWith('.cjs')
      ? { define: { 'import.meta.dirname': '__dirname' }, supported: { 'dynamic-import': false } }
      : {}),
    metafile: true,
    logLevel: 'warning',
  });
  return Object.keys(metafile.inputs).flatMap((path) => /^node_modules\/(?:@[^/]+\/)?[^/]+/.exec(path)?.[0] ?? []);
}

/**
 * Escapes what the bundler leaves unescaped, which is in regular expressions only: the program is read byte for byte,
 * as that starts faster.
 */
function escapeBeyondAscii(path) {
  const escaped = (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`;
  writeFileSync(path, readFileSync(path, 'utf8').replace(/[^\0-\x7f]/g, escaped));
}

/** The licence of every package that is part of the bundles, whole. */
function notices(folders) {
  const texts = [...new Set(folders)].sort().map((folder) => {
    const { name, version, license } = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8'));
    const files = readdirSync(folder).filter((file) => /^(licen[cs]e|notice)/i.test(file)).sort();
    const text = files.map((file) => readFileSync(`${folder}/${file}`, 'utf8').trim()).join('\n\n');
    return `${name} ${version} (${license})\n\n${text || 'No licence text comes with the package.'}`;
  });
  return `Plica contains these packages.\n\n${texts.join(`\n\n${'-'.repeat(72)}\n\n`)}\n`;
}

/** Runs the program on the recipes, so that what a command needs is compiled, and keeps that for the next start. */
async function keepCompiledForm() {
  const { load, place } = createRequire(import.meta.url)('./dist/plica.cjs');
  const { program, script } = load();
  const silent = { write: () => {}, isTerminal: () => false, columns: () => null };
  const host = { ...program.nodeHost(), out: silent, err: silent };
  await program.run(['check', 'specs'], host);
  await program.run(['show', 'specs'], host);
  await program.run(['format', '--check', 'specs'], host);
  await program.run(['explain', 'creases-cross'], host);
  writeFileSync(place, script.createCachedData());
}
