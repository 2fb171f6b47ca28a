import { join } from 'node:path';
import type { FileLeaves, Leaf, Row } from '../../emit/catalogue/leaf.js';
import type { Host, Trouble } from '../../host/host.js';
import { shown } from '../../host/reader.js';
import { visible } from '../../text/visible.js';
import { byText } from '../../text/by-text.js';
import { FACTS_ENDING, type FileFacts, LONGEST_FACTS, readFacts } from './facts-file.js';

/** Facts made elsewhere: what files came to, and their leaves, each file read again when one is asked for. */
export interface FromFacts {
  readonly kind: 'facts';
  /** By the files' names, as a folder's recipes are ordered. */
  readonly all: readonly FileLeaves[];
  /** Null: it is gone, or another. */
  readonly leaf: (row: Row) => Leaf | null;
}

/** Reads all files of facts in some folders. `madeBy` stands for this program. */
export function fromFacts(folders: readonly string[], madeBy: string, host: Host): FromFacts | Trouble {
  const read = (path: string): FileFacts | string => {
    const found = host.read(path, LONGEST_FACTS);
    if (found.kind === 'too-large') return 'it is too long';
    if (found.kind === 'unreadable') return found.reason;
    return readFacts(Buffer.from(found.bytes), madeBy);
  };
  const paths = new Map<string, string>();
  const all: FileLeaves[] = [];
  for (const path of folders.flatMap((folder) => factsIn(folder, host))) {
    const facts = read(path);
    if (typeof facts === 'string') return trouble(`${visible(shown(path))}: ${facts}`);
    const { file, rows, findings, names } = facts;
    const twin = paths.get(file);
    if (twin !== undefined)
      return trouble(
        `${visible(shown(path))} and ${visible(shown(twin))} are both the facts of ${visible(file)}`,
      );
    paths.set(file, path);
    all.push({ file, findings, names, rows: rows.map((row, index) => ({ ...row, leaf: `${index}` })) });
  }
  if (all.length === 0)
    return trouble(
      `${folders.map((folder) => visible(shown(folder))).join(', ')}: there are no facts (*${FACTS_ENDING}) here; make them by \`plica build DIR --emit facts --out OUT\``,
    );
  let last: { readonly file: string; readonly facts: FileFacts | string } | null = null;
  return {
    kind: 'facts',
    all: all.sort((a, b) => byText(a.file, b.file)),
    leaf: ({ file, leaf, name }) => {
      if (last?.file !== file) last = { file, facts: read(paths.get(file) ?? '') };
      const { facts } = last;
      if (typeof facts === 'string' || facts.rows[Number(leaf)]?.name !== name) return null;
      return facts.leaves[Number(leaf)] ?? null;
    },
  };
}

const trouble = (reason: string): Trouble => ({ kind: 'trouble', reason });

/** The files of facts in a folder and below it; links to folders are not followed. */
function factsIn(folder: string, host: Host): readonly string[] {
  const listing = host.list(folder);
  if (listing.kind !== 'entries') return [];
  return listing.entries.flatMap(({ name, kind }) => {
    const path = join(folder, name);
    if (kind === 'folder' && !name.startsWith('.')) return factsIn(path, host);
    return kind === 'file' && name.endsWith(FACTS_ENDING) ? [path] : [];
  });
}
