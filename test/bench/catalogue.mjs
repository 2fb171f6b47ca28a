// A catalogue: its pages written beside the PDF library alone and beside a general typesetter; then whole, ten times larger, and
// after one edit.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { build } from 'esbuild';
import { median, table, wholeProcess } from './measure.mjs';
import { barePdf, runsOf } from './peers/bare-pdfkit.mjs';

const FONTS = { regular: readFileSync('dist/fonts/regular.ttf'), bold: readFileSync('dist/fonts/bold.ttf') };
const DATE = new Date(0);

export async function catalogue() {
  const folder = mkdtempSync(join(tmpdir(), 'plica-bench-'));
  try {
    await writing(folder);
    whole(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const ENVELOPES = 2000;
const RUNS = 3;

/** The same pages, laid out beforehand, by three writers. */
async function writing(folder) {
  const { pages, pieces, size } = await laidOut();
  const works = [
    ['plica: tagged, linked, with an outline', async () => written(pieces, size)],
    ['pdfkit alone: operators by hand, texts encoded once', () => barePdf(pages, size, FONTS)],
  ];
  const times = works.map(() => []);
  for (let run = 0; run < RUNS; run++)
    for (const [index, [, work]] of works.entries()) {
      const start = performance.now();
      await work();
      times[index].push(performance.now() - start);
    }
  const rows = works.map(([name], index) => row(name, median(times[index]), pages.length, median(times[1])));
  const peer = typesetter(folder, pages, size);
  if (peer !== null) rows.push(row('reportlab (Python), its own calls', peer, pages.length, median(times[1])));
  table([`${pages.length} pages of ${ENVELOPES} envelopes, one thread, median of ${RUNS}`, 's', 'pages/s', 'of pdfkit'], rows);
}

const row = (name, ms, pages, bare) => [
  name,
  (ms / 1000).toFixed(2),
  Math.round((pages / ms) * 1000),
  `${((bare / ms) * 100).toFixed(0)} %`,
];

let inside = null;

async function laidOut() {
  const place = resolve('node_modules/.plica-bench.mjs');
  await build({
    entryPoints: ['test/bench/inside.ts'],
    outfile: place,
    bundle: true,
    platform: 'node',
    format: 'esm',
    external: ['pdfkit'],
    logLevel: 'warning',
  });
  inside = await import(place);
  rmSync(place);
  const { compile, source, makeLeaf, rowOf, fontMeasure, arrange, pagesOf } = inside;
  const measure = await fontMeasure({ date: DATE, fonts: FONTS });
  const text = recipes(0, ENVELOPES);
  const { recipes: all } = compile([{ id: 'a', source: source('a.plica', text) }], () => null);
  const leaves = new Map();
  const rows = all.map((recipe) => {
    const leaf = makeLeaf(recipe, measure);
    leaves.set(recipe.envelope.name, leaf);
    return rowOf(recipe, { file: 'a.plica', leaf: recipe.envelope.name, pages: leaf.pages.length });
  });
  const book = arrange({ catalogue: null, folder: 'tides', rows, problems: [] });
  const pieces = [...pagesOf({ book, leaf: ({ leaf }) => leaves.get(leaf) }, measure, () => {}).pieces()];
  const pages = pieces.flatMap((piece) => (piece.kind === 'page' ? [piece.page] : []));
  const points = 72 / 25.4;
  return { pages, pieces, size: { width: book.page.width * points, height: book.page.height * points } };
}

async function written(pieces, size) {
  let bytes = 0;
  const about = { title: 'Tides', author: null, page: size };
  for await (const piece of inside.writePdf(() => pieces, about, { date: DATE, fonts: FONTS })) bytes += piece.length;
  return bytes;
}

/** ms, without the start of Python and the reading of the pages; null where it is not installed. */
function typesetter(folder, pages, { width, height }) {
  const place = join(folder, 'pages.json');
  const plain = pages.map(({ groups }) =>
    groups.map(({ x, y, scale, items }) => ({
      x,
      y,
      scale,
      drawings: items.flatMap(({ operators }) => (operators ? [operations(operators)] : [])),
      texts: items
        .flatMap(runsOf)
        .map((run) => [run.text, run.x, run.y, run.size, run.weight, run.ink === 'full' ? 0 : 0.35, run.angleDegrees ?? 0]),
    })),
  );
  writeFileSync(place, JSON.stringify({ width, height, pages: plain }));
  const { status, stdout } = spawnSync(
    '/usr/bin/python3',
    ['test/bench/peers/reportlab_pages.py', place, 'dist/fonts/regular.ttf', 'dist/fonts/bold.ttf', join(folder, 'peer.pdf')],
    { encoding: 'utf8' },
  );
  return status === 0 ? Number(stdout) * 1000 : null;
}

/** One operation a text: several may stand on a line. */
const operations = (operators) =>
  operators
    .split('\n')
    .flatMap((line) => line.match(/(?:\[[^\]]*\]|[-\d.]+)(?: (?:\[[^\]]*\]|[-\d.]+))* [a-zA-Z]+|[hSf]/g) ?? []);

/** Whole runs of the program, compiling and all. */
function whole(folder) {
  const runs = [1000, 10000].map((count) => {
    const place = many(folder, count);
    const cold = run(place, 'tides.pdf');
    return { count, place, ...cold };
  });
  const [thousand, tenThousand] = runs;
  table(
    ['plica catalogue, whole process, cold', 's', 'peak memory, MB', 'PDF, MB'],
    [
      ...runs.map(({ count, place, seconds, megabytes }) => [
        `${count} envelopes in files of ten`,
        seconds.toFixed(1),
        megabytes.toFixed(0),
        (statSync(join(place, 'tides.pdf')).size / 1e6).toFixed(1),
      ]),
      ['ten times as many', `${(tenThousand.seconds / thousand.seconds).toFixed(1)} x`, `${(tenThousand.megabytes / thousand.megabytes).toFixed(2)} x`, ''],
    ],
  );
  const place = many(folder, ENVELOPES);
  const cold = run(place, 'tides.md');
  const edits = Array.from({ length: RUNS }, (_, index) => {
    const file = join(place, 'specs/f0007.plica');
    writeFileSync(file, readFileSync(file, 'utf8').replace(/Tide card 77\b[^"]*/, `Tide card 77, edit ${index}`));
    return run(place, 'tides.md').seconds;
  });
  const pdf = run(place, 'tides.pdf');
  table(
    [`${ENVELOPES} envelopes`, 's', 'of the first'],
    [
      ['all but the book itself, cold', cold.seconds.toFixed(1), ''],
      [`the same after one edit, median of ${RUNS}`, median(edits).toFixed(1), `${((median(edits) / cold.seconds) * 100).toFixed(1)} %`],
      ['with the PDF assembled anew', pdf.seconds.toFixed(1), `${((pdf.seconds / cold.seconds) * 100).toFixed(1)} %`],
    ],
  );
}

const run = (cwd, out) => wholeProcess(cwd, 'catalogue', 'specs', '--out', out);

function many(folder, count) {
  const place = join(folder, String(count));
  mkdirSync(join(place, 'specs'), { recursive: true });
  for (let file = 0; file * 10 < count; file++)
    writeFileSync(join(place, 'specs', `f${String(file).padStart(4, '0')}.plica`), recipes(file * 10, 10));
  return place;
}

/** Flat envelopes and boxes of many sizes. */
const recipes = (first, count) =>
  `units in\n${Array.from({ length: count }, (_, index) => {
    const number = first + index;
    const size = `${3 + (number % 40) / 16} x ${4 + (number % 37) / 16}`;
    const box = number % 4 === 0 ? '  depth: 3/8\n  bulk: 1/8\n' : '';
    return `envelope tide-${number} {\n  title: "Tide card ${number}"\n  card: ${size}\n${box}}\n`;
  }).join('')}`;
