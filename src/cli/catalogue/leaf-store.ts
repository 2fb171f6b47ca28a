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
  readonly find: (name: string) => string | null;
  readonly put: (name: string, text: string) => Written;
}

/** Before a leaf's text: what it is, the hash of the text, and how many pages it has. */
const HEAD = /^plica-leaf 1 ([0-9a-f]{64}) (\d+)\n/;

/** No leaf comes near it, in bytes; a larger file is none of ours. */
const LONGEST = 32_000_000;

export const LEAF_ENDING = '.leaf';

/** Keeps leaves on a shelf, each made only if it is not there whole. `edition` stands for the program and its fonts. */
export const keeperOf =
  (shelf: Shelf, measure: TextMeasure, edition: string): Keep =>
  (recipe) => {
    const key = leafKey(recipe, edition);
    const kept = opened(shelf.find(key));
    if (kept) return { leaf: key, pages: kept.pages };
    const leaf = makeLeaf(recipe, measure);
    const text = JSON.stringify(leaf);
    const { length: pages } = leaf.pages;
    const written = shelf.put(key, `plica-leaf 1 ${sha256(text)} ${pages}\n${text}`);
    return written.kind === 'written' ? { leaf: key, pages } : written;
  };

/** Leaves that were kept; null: it is gone, or damaged. */
export const leavesOn =
  (shelf: Shelf) =>
  ({ leaf }: Pick<Row, 'leaf'>): Leaf | null => {
    const kept = opened(shelf.find(leaf));
    return kept && (JSON.parse(kept.text) as Leaf);
  };

/** A kept leaf, if it is one and whole. */
function opened(found: string | null): { readonly text: string; readonly pages: number } | null {
  const head = found === null ? null : HEAD.exec(found);
  if (found === null || head === null) return null;
  const text = found.slice(head[0].length);
  return sha256(text) === head[1] ? { text, pages: Number(head[2]) } : null;
}

/** Leaves in a folder, a file each. */
export const folderShelf = (folder: string, host: Host): Shelf => ({
  find: (name) => {
    const read = host.read(join(folder, name + LEAF_ENDING), LONGEST);
    return read.kind === 'bytes' ? Buffer.from(read.bytes).toString() : null;
  },
  put: (name, text) => host.write(folder, [{ name: name + LEAF_ENDING, bytes: Buffer.from(text) }]),
});
