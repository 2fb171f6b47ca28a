// Puts every small change of a room into its files, each behind a switch that is thrown at run time.
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { Instrumenter } from '@stryker-mutator/instrumenter';

const SILENT = { debug: () => {}, info: () => {}, warn: () => {}, isDebugEnabled: () => false };

/** The files of a folder with the switches in them, by their paths, and the mutants, each with the text that it stands for. */
export async function instrument(folder) {
  const sources = readdirSync(folder, { recursive: true })
    .filter((path) => path.endsWith('.ts'))
    .sort()
    .map((path) => join(folder, path))
    .map((name) => ({ name, mutate: true, content: readFileSync(name, 'utf8') }));
  const { files, mutants } = await new Instrumenter(SILENT).instrument(sources, {
    plugins: null,
    ignorers: [],
    excludedMutations: [],
  });
  const texts = new Map(sources.map(({ name, content }) => [name, content]));
  return {
    files: Object.fromEntries(files.map(({ name, content }) => [resolve(name), content])),
    mutants: mutants.map((mutant) => ({ ...mutant, original: cut(texts.get(mutant.fileName), mutant.location) })),
  };
}

/** A piece of a text; lines and columns count from 0. */
function cut(text, { start, end }) {
  const lines = text.split('\n').slice(start.line, end.line + 1);
  lines[lines.length - 1] = lines.at(-1).slice(0, end.column);
  lines[0] = lines[0].slice(start.column);
  return lines.join('\n');
}
