import type { FileLeaves } from '../../emit/catalogue/leaf.js';
import { fontMeasure } from '../../emit/font-measure.js';
import type { Host } from '../../host/host.js';
import { readText } from '../../host/read-text.js';
import { source } from '../../text/source.js';
import { fileLeaves, type NotWritten, type Part } from './file-leaves.js';
import { folderShelf, keeperOf } from './leaf-store.js';

/** A recipe file of a catalogue. */
export interface BookFile {
  /** Its real path. */
  readonly id: string;
  /** What the catalogue calls it: its path from the project's root. */
  readonly label: string;
  readonly root: string;
}

/** Work that can be done anywhere: plain data. */
export interface LeafTask extends Part {
  readonly file: BookFile;
  /** The folder in which leaves are kept. */
  readonly shelf: string;
  readonly edition: string;
  readonly date: Date;
}

export type LeafResult = FileLeaves | NotWritten | { readonly kind: 'unreadable'; readonly reason: string };

/** Makes the leaves of (a part of) a file. */
export async function leafWork(
  { file, shelf, edition, date, part, parts }: LeafTask,
  host: Host,
): Promise<LeafResult> {
  const read = readText(host, file.id);
  if (read.kind === 'unreadable') return { kind: 'unreadable', reason: read.reason };
  if (read.kind === 'too-large') return { kind: 'unreadable', reason: 'it is too long to be a recipe file' };
  const measure = await measureFor(host, date);
  const input = { id: file.id, source: source(file.label, read.text) };
  const keep = keeperOf(folderShelf(shelf, host), measure, edition);
  return fileLeaves({ input, root: file.root }, host, keep, { part, parts });
}

let fonts: ReturnType<Host['fonts']> | null = null;

/** Fonts are read once. */
function measureFor(host: Host, date: Date) {
  fonts ??= host.fonts();
  return fontMeasure({ date, fonts });
}
