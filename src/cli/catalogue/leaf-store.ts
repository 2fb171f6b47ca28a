import { join } from 'node:path';
import type { TextMeasure } from '../../drawing/text-measure.js';
import { makeLeaf } from '../../emit/catalogue/leaf/make-leaf.js';
import type { Leaf, Row } from '../../emit/catalogue/leaf.js';
import type { Host, Written } from '../../host/host.js';
import type { Keep } from './file-leaves.js';
import { leafKey, sha256 } from './leaf-key.js';

/** Where leaves are kept. */
export interface Shelf {
  /** What lies under a name; null: nothing, or nothing that can be read. */
  readonly find: (name: string) => Buffer | null;
  readonly put: (name: string, bytes: Buffer) => Written;
}

/** Before a leaf: what it is, the hash of what follows, how many pages it has, and the length of their text in bytes. */
const HEAD = /^plica-leaf 1 ([0-9a-f]{64}) (\d+) (\d+)\n/;
const LONGEST_HEAD = 120;

/** No leaf comes near it, in bytes; a larger file is none of ours. */
const LONGEST = 32_000_000;

export const LEAF_ENDING = '.leaf';

/** Keeps leaves on a shelf, each made only if it is not there whole. `edition` stands for the program and its fonts. */
export const keeperOf =
  (shelf: Shelf, measure: TextMeasure, edition: string): Keep =>
  (recipe) => {
    const key = leafKey(recipe, edition);
    const kept = opened(shelf.find(key));
    if (kept) return { leaf: key, pages: kept.count };
    const { pages, ...rest } = makeLeaf(recipe, measure);
    const written = shelf.put(key, closed(JSON.stringify(pages), JSON.stringify(rest), pages.length));
    return written.kind === 'written' ? { leaf: key, pages: pages.length } : written;
  };

/** Leaves that were kept, of which only what is asked for is read; null: it is gone, or damaged. */
export const leavesOn =
  (shelf: Shelf) =>
  ({ leaf }: Pick<Row, 'leaf'>): Leaf | null => {
    const kept = opened(shelf.find(leaf));
    if (kept === null) return null;
    const rest = once(() => JSON.parse(kept.rest.toString()) as Omit<Leaf, 'pages'>);
    return {
      get pages() {
        return JSON.parse(kept.pages.toString()) as Leaf['pages'];
      },
      get facts() {
        return rest().facts;
      },
      get sheet() {
        return rest().sheet;
      },
      get source() {
        return rest().source;
      },
      get pictures() {
        return rest().pictures;
      },
    };
  };

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

function closed(pages: string, rest: string, count: number): Buffer {
  const body = Buffer.from(pages + rest);
  const head = `plica-leaf 1 ${sha256(body)} ${count} ${Buffer.byteLength(pages)}\n`;
  return Buffer.concat([Buffer.from(head), body]);
}

interface Opened {
  readonly pages: Buffer;
  readonly rest: Buffer;
  readonly count: number;
}

/** A kept leaf, if it is one and whole. */
function opened(found: Buffer | null): Opened | null {
  const head = found && HEAD.exec(found.toString('latin1', 0, LONGEST_HEAD));
  if (!found || !head) return null;
  const body = found.subarray(head[0].length);
  if (sha256(body) !== head[1]) return null;
  const length = Number(head[3]);
  return { pages: body.subarray(0, length), rest: body.subarray(length), count: Number(head[2]) };
}

/** Leaves in a folder, a file each. */
export const folderShelf = (folder: string, host: Host): Shelf => ({
  find: (name) => {
    const read = host.read(join(folder, name + LEAF_ENDING), LONGEST);
    return read.kind === 'bytes'
      ? Buffer.from(read.bytes.buffer, read.bytes.byteOffset, read.bytes.byteLength)
      : null;
  },
  put: (name, bytes) => host.write(folder, [{ name: name + LEAF_ENDING, bytes }]),
});
