// Bundles plica into dist/, and lays beside it what it needs: fonts, schemas, the notices of what is bundled.
import { chmodSync, copyFileSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename } from 'node:path';
import { build, transform } from 'esbuild';

const FONTS = 'node_modules/@expo-google-fonts/source-sans-3';

/** What most starts are: the parts of the program that they run are read at once, all others when they are asked for. */
const STARTS = [
  ['check', 'specs'],
  ['show', 'specs'],
  ['format', '--check', 'specs'],
  ['explain', 'creases-cross'],
];

const BUNDLE = {
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  minify: true,
  external: ['pdfkit'],
  metafile: true,
  logLevel: 'warning',
};

rmSync('dist', { recursive: true, force: true });
mkdirSync('dist');
const bundled = [await bundleProgram(), await bundleLibrary()].flatMap(packagesIn);
for (const file of ['pool.cjs', 'leaf-thread.cjs']) copyFileSync(`src/host/${file}`, `dist/${file}`);
for (const schema of ['src/emit/json/facts', 'src/diff/difference', 'src/cli/log'])
  copyFileSync(`${schema}.schema.json`, `dist/${basename(schema)}.schema.json`);
mkdirSync('dist/fonts');
copyFileSync(`${FONTS}/400Regular/SourceSans3_400Regular.ttf`, 'dist/fonts/regular.ttf');
copyFileSync(`${FONTS}/600SemiBold/SourceSans3_600SemiBold.ttf`, 'dist/fonts/bold.ttf');
copyFileSync(`${FONTS}/LICENSE_FONT`, 'dist/fonts/LICENSE_FONT');
writeFileSync('dist/THIRD-PARTY-NOTICES.txt', notices(bundled));

/** Bundles the library; returns what went into it. */
async function bundleLibrary() {
  const { metafile } = await build({ ...BUNDLE, entryPoints: { index: 'src/index.ts' }, outdir: 'dist' });
  return metafile;
}

/** Bundles the program in parts, and packs them: those that the starts run into one file, the rest into another. */
async function bundleProgram() {
  const { metafile, outputFiles } = await build({
    ...BUNDLE,
    entryPoints: { main: 'src/cli/main.ts' },
    outdir: 'dist',
    outExtension: { '.js': '.cjs' },
    splitting: true,
    define: { 'import.meta.dirname': '__dirname' },
    write: false,
  });
  const parts = new Map(
    await Promise.all(outputFiles.map(async ({ path, text }) => [`./${basename(path)}`, await asCommonJs(text)])),
  );
  copyFileSync('src/host/start.cjs', 'dist/plica.cjs');
  chmodSync('dist/plica.cjs', 0o755);
  pack('program.cjs', [...parts]);
  const first = new Set((await started()).partsRun());
  pack('program.cjs', [...parts].filter(([name]) => first.has(name)));
  pack('further.cjs', [...parts].filter(([name]) => !first.has(name)));
  for (const [place, bytes] of (await started()).compiledForms()) writeFileSync(place, bytes);
  return metafile;
}

/** An ES module as the body of a function of `exports`, `require`, `module` and `__dirname`. */
async function asCommonJs(text) {
  const { code } = await transform(text, {
    format: 'cjs',
    platform: 'node',
    target: 'node20',
    minify: true,
    supported: { 'dynamic-import': false },
  });
  return code;
}

/**
 * Writes parts as one expression, an object of functions. What is beyond ASCII is escaped, which after the bundler is in
 * regular expressions only: the program is read byte for byte, as that starts faster.
 */
function pack(file, parts) {
  const entries = parts.map(([name, body]) => `${JSON.stringify(name)}:function(exports,require,module,__dirname){${body}}`);
  const escaped = (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`;
  writeFileSync(`dist/${file}`, `({${entries.join(',\n')}})`.replace(/[^\0-\x7f]/g, escaped));
}

/** The program, loaded anew, after the starts. */
async function started() {
  const require = createRequire(import.meta.url);
  delete require.cache[require.resolve('./dist/plica.cjs')];
  const loaded = require('./dist/plica.cjs');
  const program = loaded.program();
  const silent = { write: () => {}, isTerminal: () => false, columns: () => null };
  const host = { ...program.nodeHost(), out: silent, err: silent };
  for (const start of STARTS) await program.run(start, host);
  return loaded;
}

/** The folders of the packages that went into a bundle. */
function packagesIn({ inputs }) {
  return Object.keys(inputs).flatMap((path) => /^node_modules\/(?:@[^/]+\/)?[^/]+/.exec(path)?.[0] ?? []);
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
