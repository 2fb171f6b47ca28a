import { bookletSheets, MOST_STAPLED } from '../../emit/catalogue/pdf/booklet.js';
import type { BookSource } from '../../emit/catalogue/book.js';
import { BOOK_EMITTERS } from '../../emit/catalogue/index.js';
import type { Found } from '../../emit/json/found.js';
import type { Host } from '../../host/host.js';
import { shown } from '../../host/reader.js';
import { visible } from '../../text/visible.js';
import { complain, type ExitCode } from '../command.js';
import { counted } from '../words.js';
import { makeBook } from './make-book.js';
import type { Order } from './order.js';
import { progressOn } from './progress.js';

/** Makes a folder's book and writes it, and says so. */
export async function writeBook(order: Order, host: Host): Promise<ExitCode> {
  const progress = await progressOn(host);
  const made = await makeBook(order, host, (done, of) => progress.show('recipe files', done, of));
  if (made.kind === 'trouble') {
    progress.clear();
    complain(host, made.reason);
    return 2;
  }
  const { book, troubles } = made;
  const rows = book.chapters.flatMap((chapter) => chapter.rows);
  progress.clear();
  for (const trouble of troubles) complain(host, trouble);
  const findings = [...book.problems, ...rows.flatMap((row) => row.findings)];
  say(findings, order, host);
  const errors = findings.some(({ severity }) => severity === 'error');
  if (order.strict && findings.length > 0) {
    made.end(false);
    complain(
      host,
      `${visible(shown(order.out))} is not written: \`--strict\` wants recipes without a finding`,
    );
    return 1;
  }
  if (rows.length === 0) {
    made.end(false);
    complain(host, `${visible(shown(order.folder))}: there is no sound envelope to make a catalogue of`);
    return troubles.length > 0 || !errors ? 2 : 1;
  }
  let lost: string | null = null;
  const source: BookSource = {
    book,
    leaf: (row) => {
      const leaf = made.leaf(row);
      if (leaf !== null) return leaf;
      lost = row.name;
      throw new Error(`the leaf of ${row.name} is gone`);
    },
  };
  let done = 0;
  let pages = 0;
  const emitter = await BOOK_EMITTERS[order.format.name]();
  const fonts = host.fonts();
  const options = {
    date: order.date,
    fonts,
    booklet: order.booklet,
    tell: (count: number) => {
      pages = count;
    },
    advance: () => progress.show('envelopes', ++done, rows.length),
  };
  try {
    const written = await host.writeStream(order.out, emitter(source, options));
    progress.clear();
    made.end(written.kind === 'written');
    if (written.kind === 'unwritable') {
      complain(host, `${visible(shown(written.path))} cannot be written: ${written.reason}`);
      return 2;
    }
  } catch (error) {
    progress.clear();
    made.end(false);
    if (lost === null) throw error;
    complain(host, `what was kept of \`${lost}\` vanished while the book was written; run the command again`);
    return 2;
  }
  host.err.write(success(order, rows.length, pages));
  return troubles.length > 0 ? 2 : errors ? 1 : 0;
}

/** `wrote tides.pdf: 19 envelopes on 29 pages`; of a booklet, how it is printed. */
function success({ out, booklet }: Order, envelopes: number, pages: number): string {
  const on = pages > 0 ? ` on ${counted(pages, 'page')}` : '';
  const wrote = `wrote ${visible(shown(out))}: ${counted(envelopes, 'envelope')}${on}\n`;
  if (!booklet) return wrote;
  const { length: sheets } = bookletSheets(pages);
  const thick =
    sheets > MOST_STAPLED
      ? `; more than ${MOST_STAPLED} are too thick to be stapled as one: bind them in parts`
      : '';
  return `${wrote}print its ${counted(sheets, 'sheet')} on both sides, flipped on the short edge; lay them into each other, fold, staple${thick}\n`;
}

/** How many findings are told here; `check` tells all. */
const TOLD = 20;

function say(findings: readonly Found[], { folder }: Order, host: Host): void {
  for (const { file, line, column, severity, rule, message } of findings.slice(0, TOLD))
    host.err.write(`${visible(file)}:${line}:${column}: ${severity}: ${rule}: ${visible(message)}\n`);
  const more = findings.length - TOLD;
  if (more > 0) host.err.write(`and ${counted(more, 'more finding')}\n`);
  if (findings.length > 0)
    host.err.write(`\`plica check ${visible(shown(folder))}\` tells how to mend them\n`);
}
