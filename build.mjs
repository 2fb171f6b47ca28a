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

/**
 * The parser library mixes ten classes into one prototype, property by property. A prototype from which one was deleted takes the
 * others up as a table does, in a tenth of the time, which is a tenth of a start (DEVELOPERS.md, decision 117).
 */
const MIXED_AS_A_TABLE = {
  name: 'mixed-as-a-table',
  setup: ({ onLoad }) =>
    onLoad({ filter: /chevrotain.*apply_mixins\.js$/ }, ({ path }) => {
      const text = readFileSync(path, 'utf8');
      const contents = text.replace(
        'export function applyMixins(derivedCtor, baseCtors) {',
        '$& derivedCtor.prototype.mixed = true; delete derivedCtor.prototype.mixed;',
      );
      if (contents === text) throw new Error(`${path} is not as decision 117 has it`);
      return { contents };
    }),
};

const BUNDLE = {
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  minify: true,
  external: ['pdfkit'],
  // ES modules before CommonJS: of these the bundler exports a default only where they are parts of their own.
  mainFields: ['module', 'main'],
  metafile: true,
  plugins: [MIXED_AS_A_TABLE],
  logLevel: 'warning',
};

const AS_COMMON_JS = {
  format: 'cjs',
  platform: 'node',
  target: 'node20',
  minify: true,
  supported: { 'dynamic-import': false },
};

rmSync('dist', { recursive: true, force: true });
mkdirSync('dist');
const bundled = [await bundleProgram(), await bundleLibrary()].flatMap(packagesIn);
for (const file of ['pool.cjs', 'leaf-thread.cjs', 'check-thread.cjs']) copyFileSync(`src/host/${file}`, `dist/${file}`);
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
  const parts = new Map(outputFiles.map(({ path, text }) => [`./${basename(path)}`, text]));
  copyFileSync('src/host/start.cjs', 'dist/plica.cjs');
  chmodSync('dist/plica.cjs', 0o755);
  await pack(parts, ['./main.cjs']);
  await pack(parts, (await started()).partsRun());
  for (const [place, bytes] of (await started()).compiledForms()) writeFileSync(place, bytes);
  return metafile;
}

/**
 * Writes the two packs. The first parts are joined into one function, which exports each by its name; the others are functions
 * of an object, each as a CommonJS module is.
 */
async function pack(parts, first) {
  const others = await Promise.all(
    [...parts]
      .filter(([name]) => !first.includes(name))
      .map(async ([name, text]) => `${JSON.stringify(name)}:${asFunction(await asCommonJs(text))}`),
  );
  writeFileSync('dist/program.cjs', ascii(`(${asFunction(await joined(parts, first))})`));
  writeFileSync('dist/further.cjs', ascii(`({${others.join(',\n')}})`));
}

function asFunction(body) {
  return `function(exports,require,module,__dirname){${body}\n}`;
}

async function asCommonJs(text) {
  return (await transform(text, AS_COMMON_JS)).code;
}

/** Parts as one body; what they import only when it is needed, and what is not among them, is asked for by name. */
async function joined(parts, names) {
  const among = {
    name: 'among',
    setup: ({ onResolve, onLoad }) => {
      onResolve({ filter: /^\.\// }, ({ path, kind }) =>
        kind !== 'dynamic-import' && names.includes(path) ? { path, namespace: 'part' } : { path, external: true },
      );
      onLoad({ filter: /.*/, namespace: 'part' }, ({ path }) => ({ contents: parts.get(path) }));
    },
  };
  const contents = names.map((name) => `export * as ${JSON.stringify(name)} from ${JSON.stringify(name)};`).join('\n');
  const { outputFiles } = await build({
    ...BUNDLE,
    ...AS_COMMON_JS,
    stdin: { contents, resolveDir: '.' },
    plugins: [among],
    write: false,
  });
  return outputFiles[0].text;
}

/**
 * Escapes what is beyond ASCII, which after the bundler is in regular expressions only: the program is read byte for byte,
 * as that starts faster.
 */
function ascii(text) {
  return text.replace(/[^\0-\x7f]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`);
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
