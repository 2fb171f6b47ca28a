import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';

/** A line of a file that imports something. `from` is a package, or the path of a file of ours. */
export interface Import {
  readonly file: string;
  readonly line: number;
  readonly text: string;
  readonly from: string;
}

/** Every TypeScript file of the program, from the project's folder on. */
export const programFiles = (): readonly string[] =>
  ['src', 'grammar'].flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .sort()
      .map((name) => posix.join(folder, name.replaceAll('\\', '/'))),
  );

/** Every import of a file, static, dynamic or by a type. */
export function importsOf(file: string): readonly Import[] {
  const text = readFileSync(file, 'utf8');
  const pattern = /(?:\bfrom\s+|\bimport\s+|\bimport\()'([^']+)'/g;
  return [...text.matchAll(pattern)].map(({ index, 1: from = '' }) => {
    const line = text.slice(0, index).split('\n').length;
    return {
      file,
      line,
      text: text.split('\n')[line - 1] as string,
      from: from.startsWith('.') ? join(dirname(file), from).replaceAll('\\', '/') : from,
    };
  });
}

/** The room that a file is in: `src/recipe`, `grammar`; a file of `src` itself is a room by its own. */
export function roomOf(path: string): string {
  const [first, second = ''] = path.split('/');
  return first === 'src' ? `src/${second}` : (first as string);
}

/** Which rooms each room may import, as the table of DEVELOPERS.md lays down. */
export function allowed(): ReadonlyMap<string, readonly string[]> {
  const rooms = new Map<string, readonly string[]>();
  const full = (word: string): string => (word === 'grammar' ? word : `src/${word}`);
  for (const row of readFileSync('DEVELOPERS.md', 'utf8').split('\n')) {
    const [, room, mayImport] = /^\| `(src\/[a-z]+|grammar)` \| [^|]+ \| ([^|]+) \|$/.exec(row) ?? [];
    if (room === undefined || mayImport === undefined) continue;
    const words = mayImport.replace(/\([^)]*\)/g, '').match(/[a-z]+/g) ?? [];
    const known = mayImport === 'nothing' ? [] : words.map(full);
    rooms.set(room, mayImport.startsWith('everything above') ? [...rooms.keys()] : known);
  }
  return rooms;
}
