// The library over a megabyte of text, beside another parser, and the engine's own for JSON, on as much of theirs.
import { buildSchema, parse as parseSchema, printIntrospectionSchema } from 'graphql';
import { compile, parse, source } from '../../dist/index.js';
import { medianOf, table } from './measure.mjs';
import { noReader, recipes, styles } from './texts.mjs';

const RUNS = 7;
/** As much as a file of recipes may have. */
const SIZE = 1_000_000;

export function throughput() {
  const schema = printIntrospectionSchema(buildSchema('type Query { tide: String }'));
  const entries = (text) => JSON.stringify(text.split('\n').map((line) => ({ kind: 'line', text: line })));
  const works = [
    ['plica: parse', upTo(SIZE, recipes), (text) => good(parse(source('bench.plica', text)))],
    // A style is never folded: what is timed is reading, names, `like`, sums and defaults.
    ['plica: parse and resolve', upTo(SIZE, styles), (text) => good(compileText(text))],
    ['graphql 16: parse its own schema', schema.repeat(Math.floor(SIZE / schema.length)), parseSchema],
    ['JSON.parse, the floor', entries(upTo(SIZE * 0.46, recipes)), JSON.parse],
  ];
  table(
    [`a megabyte in one process, median of ${RUNS}`, 'MB', 'ms', 'MB/s'],
    works.map(([name, text, work]) => {
      const ms = medianOf(RUNS, () => work(text));
      return [name, (text.length / 1e6).toFixed(2), ms.toFixed(0), (text.length / 1000 / ms).toFixed(1)];
    }),
  );
}

/** Recipes all the way to their findings, and only parsed, beside the other parser on as much text. */
export function envelopes() {
  const schema = printIntrospectionSchema(buildSchema('type Query { tide: String }'));
  let fewer = null;
  const rows = [1, 1000, 10000].map((count) => {
    const text = recipes(count);
    const runs = count === 1 ? 100 : 5;
    const compiled = medianOf(runs, () => good(compileText(text)));
    const parsed = medianOf(runs, () => parse(source('bench.plica', text)));
    const theirs = schema.repeat(Math.ceil(text.length / schema.length));
    const peer = (medianOf(runs, () => parseSchema(theirs)) / theirs.length) * text.length;
    const growth = fewer === null ? '' : `${(compiled / fewer.compiled / (count / fewer.count)).toFixed(2)} x`;
    fewer = { count, compiled };
    return [
      count === 1 ? '1 envelope' : `${count} envelopes`,
      compiled.toFixed(1),
      Math.round((count / compiled) * 1000),
      (text.length / 1000 / compiled).toFixed(2),
      growth,
      parsed.toFixed(1),
      peer.toFixed(1),
    ];
  });
  const headings = ['all the way to the findings, median of 5 (of 100 for one)', 'ms', 'envelopes/s', 'MB/s'];
  table([...headings, 'each, of one of fewer', 'parsed only, ms', 'graphql 16 on as much, ms'], rows);
}

export const compileText = (text) => compile([{ id: 'bench', source: source('bench.plica', text) }], noReader);

/** A text that was not read to its end would be read very fast. */
function good({ diagnostics }) {
  if (diagnostics.length > 0) throw new Error(diagnostics[0].message);
}

/** As many as fit into a size; the later ones have longer names. */
function upTo(size, text) {
  const many = 12_000;
  return text(Math.floor(size / (text(many).length / many)));
}
