import { dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import type { Input, Reader, ReadResult } from '../recipe/reader.js';
import { source } from '../text/source.js';
import type { Host } from './host.js';
import { readText } from './read-text.js';

/**
 * A file that takes part, and the folder that what it uses must lie in (a real path). Its id is its real path; its name is
 * the path as messages show it: as it was given, or by way of the file that uses it.
 */
export interface PlacedFile {
  readonly input: Input;
  readonly root: string;
}

/**
 * Reads what `use` names: relative to the real place of the file that uses it, inside that file's root, links resolved.
 * A file that was given, or read before, is handed out again as it was.
 */
export function reader(host: Host, given: readonly PlacedFile[]): Reader {
  const known = new Map<string, PlacedFile>(given.map((file) => [file.input.id, file]));

  return (path, from): ReadResult => {
    const by = known.get(from);
    if (by === undefined) throw new Error(`a file that was never read uses ${path}`);
    const written = resolve(dirname(from), path);
    if (!isInside(by.root, written)) return { kind: 'outside-root' };
    const id = host.realPath(written);
    if (id === null) return { kind: 'unreadable', reason: 'there is no such file' };
    if (!isInside(by.root, id)) return { kind: 'outside-root' };
    const before = known.get(id);
    if (before) return { kind: 'source', id, source: before.input.source };
    const read = readText(host, id);
    if (read.kind !== 'text') return read;
    const name = shown(join(dirname(by.input.source.name), path));
    const input = { id, source: source(name, read.text) };
    known.set(id, { input, root: by.root });
    return { kind: 'source', ...input };
  };
}

/** A path as messages show it: with `/` between folders on every machine. */
export const shown = (path: string): string => (sep === '/' ? path : path.replaceAll(sep, '/'));

/** Whether a path is a folder's, or in it. */
export function isInside(root: string, path: string): boolean {
  const way = relative(root, path);
  return way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}
