import { basename, dirname, extname } from 'node:path';
import { BOOK_FORMATS, type BookFormat } from '../../emit/catalogue/formats.js';
import type { Host } from '../../host/host.js';
import { shown } from '../../host/reader.js';
import { visible } from '../../text/visible.js';
import type { Arguments } from '../arguments.js';
import { wrongPath } from '../inputs.js';
import { stampDate } from '../stamp-date.js';

/** What book is wanted of which folder, and where. */
export interface Order {
  readonly folder: string;
  /** The file to write. */
  readonly out: string;
  readonly format: BookFormat;
  readonly booklet: boolean;
  readonly strict: boolean;
  /** Whether leaves are kept for the next time. */
  readonly cache: boolean;
  /** Folders of facts to assemble the book from; empty: recipes are compiled here. */
  readonly facts: readonly string[];
  readonly date: Date;
}

/** Reads the order out of the arguments and the environment, or says what is wrong with it. */
export function readOrder(given: Arguments, host: Host): Order | string {
  const [folder = '.'] = given.operands;
  const out = given.value('out');
  if (out === null) return 'say where to write, as in `--out tides.pdf`';
  const format = BOOK_FORMATS.find(({ endings }) => endings.includes(extname(out).toLowerCase()));
  const names = BOOK_FORMATS.map(({ endings }) => `\`${endings[0]}\``).join(', ');
  if (format === undefined)
    return `\`${visible(out)}\` says not what kind of catalogue it is; its name ends in one of ${names}`;
  if (host.kind(out) === 'folder') return `\`${visible(out)}\` is a folder; name the file to write in it`;
  const booklet = given.has('booklet');
  if (booklet && format.name !== 'pdf') return '`--booklet` is for printing: its file ends in `.pdf`';
  const wrong = wrongPath(host, folder);
  if (wrong !== null) return wrong;
  if (host.kind(folder) !== 'folder')
    return `\`${visible(shown(folder))}\` is not a folder; give the folder of the recipes, as \`${visible(shown(dirname(folder)))}\``;
  const date = stampDate(host.env['SOURCE_DATE_EPOCH']);
  if (date === null) return 'SOURCE_DATE_EPOCH is not a number of seconds since 1970';
  return {
    folder,
    out,
    format,
    booklet,
    strict: given.has('strict'),
    cache: !given.has('no-cache'),
    facts: given.value('from-facts')?.split(',') ?? [],
    date,
  };
}

/** What the book is called where no statement says so. */
export const folderName = (folder: string, host: Host): string => basename(host.realPath(folder) ?? folder);
