import { join } from 'node:path';
import { type Blobs, blobs } from './blobs.js';
import type { Entry, Host, Unreadable } from './host.js';
import { placeBelow } from './place-below.js';
import { pathText, type Tracked } from './tracked.js';
import { type Reached, reach, type Tree, tree } from './tree.js';

/** A machine whose disk is what git keeps. */
export interface View {
  readonly kind: 'view';
  readonly host: Host;
}

/**
 * The machine as it is, but for its disk: on it is only the folder `top`, with these files in it. Links that lead out of it
 * are not followed, and nothing can be written.
 */
export function view(
  host: Host,
  top: string,
  files: readonly Tracked[],
  contents: Blobs = blobs(host, likelyRead(files)),
): View {
  const kept = tree(top, files);
  const target = (id: string): string | null => wayOf(contents, id);
  const reached = (path: string): Reached => {
    const place = placeBelow(host, top, path);
    return place === null ? { kind: 'nothing' } : reach(kept, place, target);
  };
  const entry = (folder: string, name: string): Entry => {
    const path = join(folder, name);
    const found = reach(kept, path, target);
    // What leads out passes for a file, so that whoever wants to read it is told.
    const isFile = found.kind === 'outside' || kindOf(found) === 'file';
    return { name, kind: isFile ? 'file' : isLink(kept, path) ? 'link' : (kindOf(found) as Entry['kind']) };
  };

  return {
    kind: 'view',
    host: {
      ...host,
      kind: (path) => kindOf(reached(path)),
      realPath: (path) => {
        const found = reached(path);
        return found.kind === 'nothing' ? null : found.path;
      },
      read: (path, most) => {
        const found = reached(path);
        const place = found.kind === 'there' ? found.place : null;
        return place?.kind === 'file' ? contents(place.id, most) : unreadable(found);
      },
      list: (folder) => {
        const found = reached(folder);
        if (found.kind !== 'there' || found.place.kind !== 'folder') return unreadable(found);
        return { kind: 'entries', entries: [...found.place.names].map((name) => entry(found.path, name)) };
      },
      write: refuse,
      create: refuse,
      remove: refuse,
      watch: refuse,
      // Other threads would read the disk.
      beside: async () => [],
    },
  };
}

/** The contents of recipes, and of links, which say where they lead. */
export const likelyRead = (files: readonly Tracked[]): readonly string[] =>
  files
    .filter(({ kind, path }) => kind === 'link' || (kind === 'file' && path.endsWith('.plica')))
    .map(({ id }) => id);

const isLink = ({ places }: Tree, path: string): boolean => places.get(path)?.kind === 'link';

function wayOf(contents: Blobs, id: string): string | null {
  const read = contents(id, LONGEST_WAY);
  return read.kind === 'bytes' ? pathText(Buffer.from(read.bytes).toString('latin1')) : null;
}

/** The longest path that Linux takes. In bytes. */
const LONGEST_WAY = 4096;

function kindOf(found: Reached): ReturnType<Host['kind']> {
  if (found.kind !== 'there') return found.kind === 'outside' ? 'other' : 'missing';
  if (found.place.kind !== 'shut') return found.place.kind;
  return found.place.isFile ? 'file' : 'other';
}

function unreadable(found: Reached): Unreadable {
  if (found.kind !== 'there') return { kind: 'unreadable', reason: ELSEWHERE[found.kind] };
  if (found.place.kind === 'shut') return { kind: 'unreadable', reason: found.place.reason };
  return { kind: 'unreadable', reason: `it is a ${found.place.kind}` };
}

const ELSEWHERE = {
  outside: 'it is a link that leads out of the repository',
  nothing: 'there is no such file or folder',
} as const;

const refuse = (): never => {
  throw new Error('what git keeps cannot be written to, nor watched');
};
