import { inflateSync } from 'node:zlib';
import { DOMParser, onErrorStopParsing } from '@xmldom/xmldom';
import type { Compilation } from '../../src/compile.js';
import { renderJson } from '../../src/diagnostics/render-json.js';
import { renderLine } from '../../src/diagnostics/render-line.js';
import { renderSarif } from '../../src/diagnostics/render-sarif.js';
import { renderText } from '../../src/diagnostics/render-text.js';
import { diff } from '../../src/diff/diff.js';
import { renderHtml } from '../../src/diff/render-html.js';
import { renderJson as renderDifferenceJson } from '../../src/diff/render-json.js';
import { renderMarkdown } from '../../src/diff/render-markdown.js';
import { renderText as renderDifferenceText } from '../../src/diff/render-text.js';
import { BOOK_EMITTERS } from '../../src/emit/catalogue/index.js';
import { renderSheetText } from '../../src/emit/cut-sheet/render-text.js';
import { cutSheet } from '../../src/emit/cut-sheet/sheet.js';
import { fontMeasure } from '../../src/emit/font-measure.js';
import { EMITTERS } from '../../src/emit/index.js';
import { renderFacts } from '../../src/emit/json/render-facts.js';
import { layoutSvgs } from '../../src/emit/plan/layout-svg.js';
import { planCsv } from '../../src/emit/plan/plan-csv.js';
import { planJson } from '../../src/emit/plan/plan-json.js';
import { planPdf } from '../../src/emit/plan/plan-pdf.js';
import { planSheet } from '../../src/emit/plan/plan-sheet.js';
import { planBatch } from '../../src/plan/plan.js';
import { bookOfCompiled, isSound, writtenBy } from './book.js';
import { compileText } from './compile-text.js';
import { readDxf } from './dxf-file.js';
import { emitOptions } from './pdf-pages.js';
import { resolveText } from './resolve-text.js';
import { readSvg } from './svg-file.js';
import { thrown } from './text-laws.js';

type Made = readonly [name: string, content: string | Uint8Array];

const OPTIONS = emitOptions();
const NAME = 'catalogue.plica';

/** Everything that is made of a recipe's text and of what it was before: what is printed, and every kind of file of so many envelopes. */
async function allMade(
  text: string,
  before: string,
  envelopes: number,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const compiled = compileText(text, { name: NAME });
  const parts = [
    foundOf(compiled),
    await filesOf(compiled.recipes.slice(0, envelopes)),
    await plansOf(compiled),
    await booksOf(compiled, text),
    differencesOf(compileText(before, { name: NAME }), compiled),
  ];
  return new Map(parts.flat().map(([name, content]) => [name, Buffer.from(content)]));
}

const foundOf = ({ recipes, diagnostics }: Compilation): readonly Made[] => [
  ['findings.txt', renderText(diagnostics)],
  ['findings.line', renderLine(diagnostics)],
  ['findings.json', renderJson(diagnostics)],
  ['findings.sarif', renderSarif(diagnostics, { name: 'plica', version: '0' })],
  ['facts.json', renderFacts(recipes)],
  ...recipes.map((recipe): Made => [`${recipe.envelope.name}.txt`, renderSheetText(cutSheet(recipe))]),
];

async function filesOf(recipes: Compilation['recipes']): Promise<readonly Made[]> {
  const made: Made[] = [];
  for (const recipe of recipes)
    for (const { emit } of EMITTERS)
      for (const { extension, bytes } of await emit(recipe, OPTIONS))
        made.push([recipe.envelope.name + extension, bytes]);
  return made;
}

/** A batch is planned where nothing is wrong with it. */
async function plansOf({ recipes, batches }: Compilation): Promise<readonly Made[]> {
  const others = recipes.map(({ envelope, facts }) => ({ name: envelope.name, blank: facts.blank }));
  const plans = batches
    .filter(({ orders, diagnostics }) => [{ diagnostics }, ...orders].every(isSound))
    .map((batch) => planBatch(batch, others));
  const measure = await fontMeasure(OPTIONS);
  const made: Made[] = [
    ['plans.json', planJson(plans)],
    ['plans.csv', planCsv(plans)],
  ];
  for (const plan of plans) {
    const { name } = plan.batch;
    made.push([`${name}.plan.txt`, renderSheetText(planSheet(plan))]);
    made.push([`${name}.plan.pdf`, await planPdf(plan, OPTIONS)]);
    for (const layout of layoutSvgs(plan, measure)) made.push([`${name}.${layout.name}.svg`, layout.text]);
  }
  return made;
}

async function booksOf(compiled: Compilation, text: string): Promise<readonly Made[]> {
  const [catalogue = {}] = resolveText(text, { name: NAME }).catalogues;
  const book = await bookOfCompiled(compiled, catalogue);
  const made: Made[] = [];
  for (const [format, load] of Object.entries(BOOK_EMITTERS))
    made.push([`book.${format}`, await writtenBy(await load(), book)]);
  return made;
}

function differencesOf(before: Compilation, after: Compilation): readonly Made[] {
  const difference = diff(before, after);
  return [
    ['difference.txt', renderDifferenceText(difference)],
    ['difference.json', renderDifferenceJson(difference)],
    ['difference.markdown', renderMarkdown(difference)],
    ['difference.html', renderHtml(difference)],
  ];
}

/** Every law of what is made of a text that it breaks, by name; an exception is one too. */
export async function brokenOutputLaws(text: string, before = text): Promise<readonly string[]> {
  try {
    const made = await allMade(text, before, Infinity);
    const again = await allMade(text, before, 1);
    return [
      ...[...again].flatMap(([name, bytes]) =>
        Buffer.from(bytes).equals(made.get(name) ?? Buffer.of())
          ? []
          : [`${kindOf(name)}: the same bytes again`],
      ),
      ...[...made].flatMap(([name, bytes]) => brokenBy(name, bytes, text)),
    ];
  } catch (error) {
    return [thrown(error)];
  }
}

const kindOf = (name: string): string => name.slice(name.search(/[a-z]+$/));

function brokenBy(name: string, bytes: Uint8Array, recipe: string): readonly string[] {
  const kind = kindOf(name);
  // Where nothing is found, nothing is printed.
  if (bytes.length === 0) return name.startsWith('findings.') ? [] : [`${kind}: is not empty`];
  try {
    READERS[kind]?.(bytes);
  } catch (error) {
    return [`${kind}: can be read: ${thrown(error)}`];
  }
  const nonsense = NONSENSE.exec(WORDS[kind]?.(bytes) ?? textOf(bytes))?.[0];
  return nonsense === undefined || recipe.includes(nonsense) ? [] : [`${kind}: no ${nonsense}`];
}

/** How a number that is none, or a value that is not there, comes out as text. */
const NONSENSE = /\b(?:NaN|Infinity|undefined)\b|\[object/;

const textOf = (bytes: Uint8Array): string => new TextDecoder('utf-8', { fatal: true }).decode(bytes);

const json = (bytes: Uint8Array): unknown => JSON.parse(textOf(bytes));

/** What reads each kind of file, and throws where it cannot; none of it had a part in writing it. */
const READERS: Readonly<Record<string, (bytes: Uint8Array) => unknown>> = {
  svg: (bytes) => readSvg(textOf(bytes)),
  html: (bytes) =>
    new DOMParser({ onError: onErrorStopParsing }).parseFromString(
      textOf(bytes).replace(/^<!doctype html>\n/, ''),
      'text/html',
    ),
  dxf: readDxf,
  json,
  sarif: json,
  fold: json,
  pdf: (bytes) => {
    if (!/^%PDF-1\.\d[^]*%%EOF\s*$/.test(Buffer.from(bytes).toString('latin1'))) throw new Error('no PDF');
  },
};

/** What a file of a kind says, where that is not its text as it stands. */
const WORDS: Readonly<Record<string, (bytes: Uint8Array) => string>> = {
  pdf: streamsOf,
  html: (bytes) => textOf(bytes).replaceAll(/<script>[^]*?<\/script>/g, ''),
};

/** What is drawn and written on the pages of a PDF, and its metadata. */
function streamsOf(bytes: Uint8Array): string {
  const file = Buffer.from(bytes);
  return [...file.toString('latin1').matchAll(/\/FlateDecode[^>]*>>\s*stream\r?\n/g)]
    .map(({ index, 0: head }) => inflateSync(file.subarray(index + head.length)).toString('latin1'))
    .filter((stream) => !stream.startsWith('\0\x01\0\0'))
    .join('\n');
}
