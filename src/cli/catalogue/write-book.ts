import { bookletSheets, MOST_STAPLED } from '../../emit/catalogue/pdf/booklet.js';
import type { BookSource } from '../../emit/catalogue/book.js';
import { BOOK_EMITTERS } from '../../emit/catalogue/index.js';
import type { Found } from '../../emit/json/found.js';
import type { Host, Written } from '../../host/host.js';
import { shown } from '../../host/reader.js';
import { visible } from '../../text/visible.js';
import { complain, type ExitCode, worst } from '../command.js';
import { counted } from '../../text/counted.js';
import { type Made, makeBook } from './make-book.js';
import type { Order } from './order.js';
import { type Progress, progressOn } from './progress.js';

/** Makes a folder's book and writes it, and says so. */
export async function writeBook(order: Order, host: Host): Promise<ExitCode> {
  const progress = await progressOn(host);
  const made = await makeBook(order, host, (done, of) => progress.show('recipe files', done, of));
  progress.clear();
  if (made.kind === 'trouble') return refuse(host, made.reason);
  for (const trouble of made.troubles) complain(host, trouble);
  const rows = made.book.chapters.flatMap((chapter) => chapter.rows);
  const findings = [...made.book.problems, ...rows.flatMap((row) => row.findings)];
  say(findings, order, host);
  const found: ExitCode = findings.some(({ severity }) => severity === 'error') ? 1 : 0;
  const read: ExitCode = made.troubles.length > 0 ? 2 : 0;
  if (order.strict && findings.length > 0) {
    made.end(false);
    complain(host, `${named(order.out)} is not written: \`--strict\` wants recipes without a finding`);
    return 1;
  }
  if (rows.length === 0) {
    made.end(false);
    complain(host, `${named(order.folder)}: there is no sound envelope to make a catalogue of`);
    return found === 1 ? worst(found, read) : 2;
  }
  return worst(found, read, await writeMade(made, rows.length, order, host, progress));
}

/** Writes a book that is made, piece by piece. */
async function writeMade(
  made: Made,
  envelopes: number,
  order: Order,
  host: Host,
  progress: Progress,
): Promise<ExitCode> {
  const lost: string[] = [];
  const source: BookSource = {
    book: made.book,
    leaf: (row) => {
      const leaf = made.leaf(row);
      if (leaf !== null) return leaf;
      lost.push(row.name);
      throw new Error(`the leaf of ${row.name} is gone`);
    },
  };
  let [done, pages] = [0, 0];
  const emitter = await BOOK_EMITTERS[order.format.name]();
  const pieces = emitter(source, {
    date: order.date,
    fonts: host.fonts(),
    booklet: order.booklet,
    tell: (count) => {
      pages = count;
    },
    advance: () => progress.show('envelopes', ++done, envelopes),
  });
  let written: Written | null = null;
  try {
    written = await host.writeStream(order.out, pieces);
  } catch (error) {
    if (lost.length === 0) throw error;
  } finally {
    progress.clear();
    made.end(written?.kind === 'written');
  }
  if (written === null)
    return refuse(
      host,
      `what was kept of \`${lost.join('')}\` vanished while the book was written; run the command again`,
    );
  if (written.kind === 'unwritable')
    return refuse(host, `${named(written.path)} cannot be written: ${written.reason}`);
  host.err.write(success(order, envelopes, pages));
  return 0;
}

const named = (path: string): string => visible(shown(path));

function refuse(host: Host, reason: string): ExitCode {
  complain(host, reason);
  return 2;
}

/** `wrote tides.pdf: 19 envelopes on 29 pages`; of a booklet, how it is printed. */
function success({ out, booklet }: Order, envelopes: number, pages: number): string {
  const on = pages > 0 ? ` on ${counted(pages, 'page')}` : '';
  const wrote = `wrote ${named(out)}: ${counted(envelopes, 'envelope')}${on}\n`;
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
  if (findings.length > 0) host.err.write(`\`plica check ${named(folder)}\` tells how to mend them\n`);
}
