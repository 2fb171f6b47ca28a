import { basename, dirname, join } from 'node:path';
import { arrange } from '../../emit/catalogue/arrange.js';
import type { Book } from '../../emit/catalogue/book.js';
import type { FileLeaves, Leaf, Row } from '../../emit/catalogue/leaf.js';
import { repeatedNames } from '../../emit/catalogue/repeated-names.js';
import type { Host, Trouble } from '../../host/host.js';
import { bookFiles } from './book-files.js';
import { clearLeaves, dropLeaves } from './clear-leaves.js';
import { gather } from './gather.js';
import { editionOf } from './edition-of.js';
import { fromFacts } from './from-facts.js';
import { folderShelf, leavesOn } from './leaf-store.js';
import { folderName, type Order } from './order.js';
import { readStatement } from './statement.js';

/** A book, and where its leaves are. */
export interface Made {
  readonly kind: 'made';
  readonly book: Book;
  /** Null: it is gone. */
  readonly leaf: (row: Row) => Leaf | null;
  /** Sentences about folders and files that could not be read. */
  readonly troubles: readonly string[];
  /** Called once the book is written, or is not to be. */
  readonly end: (written: boolean) => void;
}

/** Told of each file that has been read, and of how many there are. */
export type Advance = (done: number, of: number) => void;

/** Compiles a folder's recipes into rows and leaves, or reads those made elsewhere, and puts them in order. */
export async function makeBook(order: Order, host: Host, advance: Advance): Promise<Made | Trouble> {
  const edition = await editionOf(host, host.fonts());
  if (order.facts.length === 0) return compileBook(order, edition, host, advance);
  const facts = fromFacts(order.facts, edition, host);
  if (facts.kind === 'trouble') return facts;
  const book = bookOf(order, facts.all, host);
  return { kind: 'made', book, leaf: facts.leaf, troubles: [], end: () => {} };
}

async function compileBook(
  order: Order,
  edition: string,
  host: Host,
  advance: Advance,
): Promise<Made | Trouble> {
  const { files, troubles } = bookFiles(order.folder, host);
  const shelf = join(
    dirname(order.out),
    order.cache ? '.plica-leaves' : `.plica-leaves-${basename(order.out)}`,
  );
  const drop = (): void => {
    if (!order.cache) dropLeaves(shelf, host);
  };
  const forget = host.onStop(drop);
  const end = (written: boolean, rows: readonly Row[]): void => {
    forget();
    drop();
    const keys = rows.map(({ leaf }) => leaf);
    if (order.cache && written) clearLeaves(shelf, basename(order.out), keys, host);
  };
  const gathering = await gather(files, { host, shelf, edition, date: order.date, advance });
  if (gathering.kind === 'trouble') {
    end(false, []);
    return gathering;
  }
  const book = bookOf(order, gathering.all, host);
  const rows = book.chapters.flatMap((chapter) => chapter.rows);
  return {
    kind: 'made',
    book,
    leaf: leavesOn(folderShelf(shelf, host)),
    troubles: [...troubles, ...gathering.troubles],
    end: (written) => end(written, rows),
  };
}

/** Whether some recipe was lost before it had a name. */
const isBroken = (all: readonly FileLeaves[]): boolean =>
  all.some(({ findings }) => findings.some(({ severity }) => severity === 'error'));

/** What files came to, as a book: by the folder's statement, no name twice. */
export function bookOf(order: Order, all: readonly FileLeaves[], host: Host): Book {
  const repeated = repeatedNames(all);
  const again = new Set(repeated.map(({ file, line }) => `${file}:${line}`));
  const rows = all.flatMap((file) => file.rows).filter(({ file, line }) => !again.has(`${file}:${line}`));
  const names = new Set(all.flatMap((file) => file.names.map(({ name }) => name)));
  const tags = new Set(rows.flatMap((row) => row.tags));
  const { catalogue, findings } = readStatement(
    order.folder,
    { names, tags: rows.length < names.size || isBroken(all) ? null : tags },
    host,
  );
  const problems = [...all.flatMap((file) => file.findings), ...repeated, ...findings];
  return arrange({ catalogue, folder: folderName(order.folder, host), rows, problems });
}
