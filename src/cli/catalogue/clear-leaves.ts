import { join } from 'node:path';
import type { Host } from '../../host/host.js';
import { LEAF_ENDING } from './leaf-store.js';

const LIST_ENDING = '.list';
const FIRST = 'plica-leaves 1';
const LONGEST = 64_000_000;

/** A leaf's file: its key is a hash. */
const LEAF_FILE = new RegExp(`^[0-9a-f]{64}\\${LEAF_ENDING}$`);

/**
 * Notes which leaves a book needs, and clears away those that no book of the folder needs any more: files that are called as only
 * leaves are.
 */
export function clearLeaves(shelf: string, book: string, needed: Iterable<string>, host: Host): void {
  const text = [FIRST, ...needed].join('\n');
  const noted = host.write(shelf, [{ name: book + LIST_ENDING, bytes: Buffer.from(`${text}\n`) }]);
  const listing = host.list(shelf);
  if (noted.kind !== 'written' || listing.kind !== 'entries') return;
  const names = listing.entries.map(({ name }) => name);
  const wanted = new Set(
    names.filter((name) => name.endsWith(LIST_ENDING)).flatMap((name) => listed(join(shelf, name), host)),
  );
  for (const name of names)
    if (LEAF_FILE.test(name) && !wanted.has(name.slice(0, -LEAF_ENDING.length)))
      host.remove(join(shelf, name));
}

function listed(path: string, host: Host): readonly string[] {
  const read = host.read(path, LONGEST);
  if (read.kind !== 'bytes') return [];
  const [first, ...keys] = Buffer.from(read.bytes).toString().split('\n');
  return first === FIRST ? keys : [];
}

/** Takes away a folder of leaves that was made for one book only. */
export function dropLeaves(shelf: string, host: Host): void {
  const listing = host.list(shelf);
  if (listing.kind !== 'entries') return;
  for (const { name } of listing.entries) if (LEAF_FILE.test(name)) host.remove(join(shelf, name));
  host.remove(shelf);
}
