import { posix } from 'node:path';
import { type Compilation, compile } from '../../src/compile.js';
import type { Reader } from '../../src/recipe/reader.js';
import { source } from '../../src/text/source.js';

/** What else a recipe's text needs. */
export interface Beside {
  /** The name of the text itself, as findings show it. */
  readonly name?: string;
  /** Texts of the files that it may use, by path. */
  readonly files?: Readonly<Record<string, string>>;
}

/** Compiles a recipe's text, with the files it uses at hand; no disk. */
export const compileText = (text: string, { name = 'recipe.plica', files = {} }: Beside = {}): Compilation =>
  compile([{ id: name, source: source(name, text) }], readerOf({ ...files, [name]: text }));

/** Reads from texts held in memory; nothing above their root. */
export const readerOf =
  (files: Readonly<Record<string, string>>): Reader =>
  (path, from) => {
    const id = posix.normalize(posix.join(posix.dirname(from), path));
    if (id.startsWith('..')) return { kind: 'outside-root' };
    const text = files[id];
    return text === undefined
      ? { kind: 'unreadable', reason: 'no such file' }
      : { kind: 'source', id, source: source(id, text) };
  };
