import { posix } from 'node:path';
import { atMost } from './at-most.js';
import type { Entry, Fonts, Host, Outlet, Read, Watch, Written } from './host.js';

/** A machine that is only remembered: for tests, and wherever there is no disk. Folders exist where files do. */
export interface MemoryHost extends Host {
  /** What was written to the standard streams so far. */
  readonly said: { out: string; err: string };
  /** Every file by its absolute path. */
  readonly files: ReadonlyMap<string, Uint8Array>;
}

/** What is remembered. Paths start in the working folder, `/studio`. */
export interface Memory {
  readonly files?: Readonly<Record<string, string | Uint8Array>>;
  /** Empty folders. */
  readonly folders?: readonly string[];
  readonly env?: Readonly<Record<string, string>>;
  readonly input?: string;
  readonly terminal?: { readonly columns: number };
  /** Why nothing can be written; left out: everything can. */
  readonly unwritable?: string;
  /** Files that are read-only. */
  readonly readOnly?: readonly string[];
  readonly fonts?: Fonts;
  /** What stands in for git; left out: there is none. */
  readonly git?: Host['git'];
  /** What becomes of the files while somebody looks out for changes, one moment after the other (null: it is gone). */
  readonly changes?: readonly Readonly<Record<string, string | Uint8Array | null>>[];
}

const CWD = '/studio';

export function memoryHost(memory: Memory = {}): MemoryHost {
  const place = (path: string): string => posix.resolve(CWD, path);
  const files = new Map<string, Uint8Array>();
  for (const [path, text] of Object.entries(memory.files ?? {})) files.set(place(path), bytesOf(text));
  const folders = new Set([CWD, ...(memory.folders ?? []).map(place)]);
  const readOnly = new Set((memory.readOnly ?? []).map(place));
  const said = { out: '', err: '' };

  const isFolder = (path: string): boolean =>
    folders.has(path) || [...files.keys()].some((file) => file.startsWith(path === '/' ? path : `${path}/`));
  const kind = (path: string): 'file' | 'folder' | 'missing' =>
    files.has(path) ? 'file' : isFolder(path) ? 'folder' : 'missing';

  const host: MemoryHost = {
    said,
    files,
    cwd: CWD,
    env: memory.env ?? {},
    out: outlet(said, 'out', memory.terminal ?? null),
    err: outlet(said, 'err', memory.terminal ?? null),
    kind: (path) => kind(place(path)),
    realPath: (path) => (kind(place(path)) === 'missing' ? null : place(path)),
    read: (path, most) => limited(files.get(place(path)), most),
    readInput: async (most) => limited(bytesOf(memory.input ?? ''), most),
    list: (folder) => ({
      kind: 'entries',
      entries: entriesOf(place(folder), [...files.keys(), ...folders], kind),
    }),
    write: (folder, written) => {
      if (memory.unwritable !== undefined) {
        return { kind: 'unwritable', path: folder, reason: memory.unwritable };
      }
      const shut = written
        .map(({ name }) => posix.join(place(folder), name))
        .find((path) => readOnly.has(path));
      if (shut !== undefined) return { kind: 'unwritable', path: shut, reason: 'it is read-only' };
      for (const { name, bytes } of written) files.set(posix.join(place(folder), name), bytes);
      return { kind: 'written' };
    },
    writeStream: async (path, pieces) => {
      const all: Uint8Array[] = [];
      for await (const piece of pieces) all.push(piece);
      const bytes = new Uint8Array(Buffer.concat(all));
      return host.write(posix.dirname(path), [{ name: posix.basename(path), bytes }]);
    },
    create: (path, bytes) => {
      const refuse = (reason: string): Written => ({ kind: 'unwritable', path, reason });
      if (kind(place(path)) !== 'missing') return refuse('a file is in its place');
      if (!isFolder(posix.dirname(place(path)))) return refuse('there is no such file or folder');
      files.set(place(path), bytes);
      return { kind: 'written' };
    },
    remove: (path) =>
      files.delete(place(path)) || folders.delete(place(path))
        ? { kind: 'written' }
        : { kind: 'unwritable', path, reason: 'there is no such file or folder' },
    watch: () => watch(memory.changes ?? [], place, files),
    git: memory.git ?? (() => ({ kind: 'trouble', reason: 'git is not installed' })),
    fonts: () => memory.fonts ?? { regular: new Uint8Array(), bold: new Uint8Array() },
    edition: async () => 'remembered',
    threads: async () => null,
    beside: async () => [],
    onStop: () => () => {},
  };
  return host;
}

/** Each wait ends with the next of the changes; after the last, somebody asks to stop. */
function watch(
  changes: NonNullable<Memory['changes']>,
  place: (path: string) => string,
  files: Map<string, Uint8Array>,
): Watch {
  const coming = changes.values();
  return {
    follow: async () => {},
    changed: async () => {
      const { done, value } = coming.next();
      for (const [path, content] of Object.entries(value ?? {})) {
        if (content === null) files.delete(place(path));
        else files.set(place(path), bytesOf(content));
      }
      return done !== true;
    },
    stop: async () => {},
  };
}

const bytesOf = (content: string | Uint8Array): Uint8Array =>
  typeof content === 'string' ? new TextEncoder().encode(content) : content;

const limited = (bytes: Uint8Array | undefined, most: number): Read =>
  bytes === undefined
    ? { kind: 'unreadable', reason: 'there is no such file or folder' }
    : atMost(bytes, most);

const outlet = (
  said: { out: string; err: string },
  stream: 'out' | 'err',
  terminal: Memory['terminal'] | null,
): Outlet => ({
  write: (text) => {
    said[stream] += text;
  },
  isRead: () => true,
  isTerminal: () => terminal !== null,
  columns: () => terminal?.columns ?? null,
});

/** The names directly below a folder, out of the paths of everything. */
function entriesOf(
  folder: string,
  paths: readonly string[],
  kind: (path: string) => Entry['kind'] | 'missing',
): readonly Entry[] {
  const names = new Set<string>();
  for (const path of paths) {
    const way = posix.relative(folder, path);
    if (way !== '' && !way.startsWith('..')) names.add(way.split('/')[0] as string);
  }
  return [...names].map((name) => ({ name, kind: kind(posix.join(folder, name)) as Entry['kind'] }));
}
