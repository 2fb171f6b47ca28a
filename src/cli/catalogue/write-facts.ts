import { dirname, join, posix } from 'node:path';
import type { Leaf } from '../../emit/catalogue/leaf.js';
import { makeLeaf } from '../../emit/catalogue/leaf/make-leaf.js';
import { fontMeasure } from '../../emit/font-measure.js';
import type { Host } from '../../host/host.js';
import { readText } from '../../host/read-text.js';
import { shown } from '../../host/reader.js';
import { source } from '../../text/source.js';
import { visible } from '../../text/visible.js';
import { bookFile } from './book-files.js';
import { editionOf } from './edition-of.js';
import { FACTS_ENDING, factsFile } from './facts-file.js';
import { fileLeaves } from './file-leaves.js';

/**
 * Writes the facts of recipe files, a file each, called by its path from the project's root. `given`: the folder or file that each
 * was found by. The paths written; or a sentence about what could not be.
 */
export async function writeFacts(
  files: readonly { readonly path: string; readonly given: string }[],
  out: string,
  date: Date,
  host: Host,
): Promise<readonly string[] | string> {
  const fonts = host.fonts();
  const measure = await fontMeasure({ date, fonts });
  const madeBy = await editionOf(host, fonts);
  const written: string[] = [];
  for (const { path, given } of files) {
    const file = bookFile(path, host.kind(given) === 'folder' ? given : dirname(path), host);
    const read = file && readText(host, file.id);
    if (!file || read?.kind !== 'text') continue;
    const leaves: Leaf[] = [];
    const input = { id: file.id, source: source(file.label, read.text) };
    const made = fileLeaves({ input, root: file.root }, host, (recipe) => {
      const leaf = makeLeaf(recipe, measure);
      leaves.push(leaf);
      return { leaf: '', pages: leaf.pages.length };
    });
    if ('reason' in made) return made.reason;
    const name = file.label.replace(/\.plica$/, FACTS_ENDING);
    const result = host.write(join(out, posix.dirname(name)), [
      { name: posix.basename(name), bytes: factsFile({ ...made, leaves }, madeBy) },
    ]);
    if (result.kind === 'unwritable')
      return `${visible(shown(result.path))} cannot be written: ${result.reason}`;
    written.push(shown(join(out, name)));
  }
  return written;
}
