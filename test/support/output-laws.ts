import { inflateSync } from 'node:zlib';
import { DOMParser, onErrorStopParsing } from '@xmldom/xmldom';
import { EMITTERS } from '../../src/emit/index.js';
import { plica } from './command-line.js';
import { compileText } from './compile-text.js';
import { readDxf } from './dxf-file.js';
import { emitOptions } from './pdf-pages.js';
import { readSvg } from './svg-file.js';
import { thrown } from './text-laws.js';

/** What is made of a recipe and of what it was before: every command that only reads, every kind of file, every format. */
const COMMANDS = [
  ...['text', 'line', 'json', 'sarif'].map((format) => `check a.plica --format ${format}`),
  ...['text', 'json'].map((format) => `show a.plica --format ${format}`),
  ...['text', 'json', 'csv'].map((format) => `plan a.plica --format ${format}`),
  ...['text', 'markdown', 'json', 'html'].map((format) => `diff before/a.plica a.plica --format ${format}`),
  'build a.plica --emit facts --out out',
  'plan a.plica --out out',
  ...['pdf', 'html', 'csv', 'md', 'json'].map((format) => `catalogue . --no-cache --out out/book.${format}`),
];

/** Everything that is made of a recipe's text: files by their names, what is printed by its command. */
async function allMade(text: string, before: string): Promise<ReadonlyMap<string, Uint8Array>> {
  const made = new Map<string, Uint8Array>();
  for (const command of COMMANDS) {
    // The statement of a catalogue is read from one file only.
    const own = command.startsWith('catalogue') ? 'catalogue.plica' : 'a.plica';
    const files = command.startsWith('diff') ? { [own]: text, 'before/a.plica': before } : { [own]: text };
    const { out, files: left } = await plica(command, { files });
    made.set(command, Buffer.from(out));
    for (const [path, bytes] of left) if (path.startsWith('/studio/out/')) made.set(path, bytes);
  }
  const options = emitOptions();
  for (const recipe of compileText(text).recipes)
    for (const { emit } of EMITTERS)
      for (const { extension, bytes } of await emit(recipe, options))
        made.set(`${recipe.envelope.name}${extension}`, bytes);
  return made;
}

/** Every law of what is made of a text that it breaks, by name; an exception is one too. */
export async function brokenOutputLaws(text: string, before = text): Promise<readonly string[]> {
  try {
    const made = await allMade(text, before);
    const again = await allMade(text, before);
    return [...made].flatMap(([name, bytes]) => [
      ...(Buffer.from(again.get(name) ?? []).equals(bytes) ? [] : [`${kindOf(name)}: the same bytes again`]),
      ...brokenBy(name, bytes, text),
    ]);
  } catch (error) {
    return [thrown(error)];
  }
}

/** `svg` of `tides.svg`, `json` of `show a.plica --format json`. */
const kindOf = (name: string): string => name.slice(name.search(/[a-z]+$/));

function brokenBy(name: string, bytes: Uint8Array, recipe: string): readonly string[] {
  const kind = kindOf(name);
  // Where there is nothing to print, a command prints nothing.
  if (bytes.length === 0) return name.includes(' ') ? [] : [`${kind}: is not empty`];
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
