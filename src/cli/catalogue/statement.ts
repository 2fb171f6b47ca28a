import { join } from 'node:path';
import { type Catalogue, STATED_IN } from '../../recipe/catalogue.js';
import { resolve } from '../../recipe/resolve.js';
import { type FolderNames, unknownTakes } from '../../recipe/section-names.js';
import { type Found, found } from '../../emit/json/found.js';
import type { Host } from '../../host/host.js';
import { readText } from '../../host/read-text.js';
import { reader } from '../../host/reader.js';
import { source } from '../../text/source.js';
import { bookFile } from './book-files.js';

/** What a folder's `catalogue.plica` states, and what is wrong with the sections. */
export interface Statement {
  readonly catalogue: Catalogue | null;
  readonly findings: readonly Found[];
}

/** Reads the statement; what else is wrong with its file is found as with any other. */
export function readStatement(folder: string, names: FolderNames, host: Host): Statement {
  const file = bookFile(join(folder, STATED_IN), folder, host);
  if (file === null) return { catalogue: null, findings: [] };
  const read = readText(host, file.id);
  if (read.kind !== 'text') return { catalogue: null, findings: [] };
  const input = { id: file.id, source: source(file.label, read.text) };
  const [catalogue = null] = resolve([input], reader(host, [{ input, root: file.root }])).catalogues;
  const unknown = catalogue === null ? [] : unknownTakes(catalogue, names);
  return { catalogue, findings: unknown.map((diagnostic) => found(diagnostic)) };
}
